#include "tests/support/rendered_scan.h"

#include "demo-scans/maker/presets.h"
#include "libimaging/boundary/propose_reading.h"

#include <atomic>
#include <stdexcept>

namespace pithward::test {

namespace {

template <typename T>
T value_of(Outcome<T> outcome) {
    if (!outcome) {
        throw std::runtime_error(outcome.error().line());
    }
    return std::move(*outcome);
}

ScanFile written(const TemporaryFolder& folder, const demo::Picture& picture, demo::Format format) {
    static std::atomic<int> count{0};
    const std::string file = folder.file("scan " + std::to_string(++count) + demo::suffix(format));
    if (const auto done = demo::write_image(file, picture, format); !done) {
        throw std::runtime_error(done.error().line());
    }
    return value_of(ScanFile::open(file));
}

} // namespace

RenderedScan rendered_scan(const TemporaryFolder& folder, const demo::Scene& scene, demo::Format format) {
    demo::Rendering rendering = value_of(demo::render(scene));
    ScanFile scan = written(folder, rendering.picture, format);
    Calibration calibration = value_of(believed_calibration(scan.header(), std::nullopt));
    return {std::move(scan), calibration, {std::move(rendering.truth)}};
}

RenderedScan rendered_tray(const TemporaryFolder& folder, const std::vector<demo::Scene>& scenes) {
    demo::TrayRendering rendering = value_of(demo::render_tray(scenes));
    ScanFile scan = written(folder, rendering.picture, demo::Format::Png);
    Calibration calibration = value_of(believed_calibration(scan.header(), std::nullopt));
    return {std::move(scan), calibration, std::move(rendering.truths)};
}

demo::Scene clear_scene(std::uint64_t seed, int number, int most_rings) {
    demo::Scene scene = demo::clear_core(seed, number).scenes.front();
    if (scene.widths_mm.size() > static_cast<std::size_t>(most_rings)) {
        scene.widths_mm.resize(static_cast<std::size_t>(most_rings));
    }
    return scene;
}

Reading read_along_truth(const RenderedScan& rendered, OuterWood outer) {
    ReadingRequest request;
    request.scan_name = rendered.scan.header().file;
    request.calibration = rendered.calibration;
    request.path = rendered.truth().path;
    request.wood = rendered.truth().wood;
    request.outer = outer;
    request.last_year = rendered.truth().last_complete_ring_year;
    return value_of(propose_reading(rendered.scan, request));
}

demo::Picture plain_picture(int width, int height, std::uint8_t grey, double dpi) {
    const auto bytes = std::size_t{3} * static_cast<std::size_t>(width) * static_cast<std::size_t>(height);
    return {.pixels = std::vector<std::uint8_t>(bytes, grey), .width = width, .height = height, .dpi = dpi};
}

ScanFile opened(const TemporaryFolder& folder, const demo::Picture& picture) {
    return written(folder, picture, demo::Format::Png);
}

} // namespace pithward::test
