// Renders a clear core to measure the program's speed on: an LZW TIFF of exactly the length and breadth asked for, with
// the core once or several times below each other. Usage: long_scan FILE LENGTH_MM DPI HEIGHT_PX [CORES]
#include "demo-scans/maker/scene.h"
#include "demo-scans/maker/write.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>

namespace {

using namespace pithward;

/// Rings of about 1.1 mm over all of the scan but its margins.
demo::Scene core_of(double length_mm, double dpi) {
    demo::Scene scene;
    scene.seed = 300;
    scene.dpi = dpi;
    scene.margin_mm = 2.0;
    scene.mount.width_mm = 8.5;
    scene.pith_offset_mm = 1.0;
    const int rings = std::max(4, static_cast<int>((length_mm - 9.0) / 1.1));
    for (int k = 0; k < rings; ++k) {
        scene.widths_mm.push_back(1.1 + 0.35 * std::sin(2.3 * k) + 0.15 * std::sin(0.7 * k));
    }
    return scene;
}

/// Cut from the middle, or filled up with the last row and column.
demo::Picture fitted(const demo::Picture& from, int width, int height) {
    demo::Picture out{.pixels = {}, .width = width, .height = height, .dpi = from.dpi};
    out.pixels.reserve(std::size_t{3} * static_cast<std::size_t>(width) * static_cast<std::size_t>(height));
    const int top = std::max(0, (from.height - height) / 2);
    for (int y = 0; y < height; ++y) {
        for (int x = 0; x < width; ++x) {
            const auto row = static_cast<std::size_t>(std::min(top + y, from.height - 1));
            const auto column = static_cast<std::size_t>(std::min(x, from.width - 1));
            const std::size_t at = 3 * (row * static_cast<std::size_t>(from.width) + column);
            for (std::size_t c = 0; c < 3; ++c) {
                out.pixels.push_back(from.pixels[at + c]);
            }
        }
    }
    return out;
}

/// The same picture so many times, each below the one before.
demo::Picture stacked(demo::Picture picture, int times) {
    const std::vector<std::uint8_t> once = picture.pixels;
    for (int i = 1; i < times; ++i) {
        picture.pixels.insert(picture.pixels.end(), once.begin(), once.end());
    }
    picture.height *= times;
    return picture;
}

} // namespace

int main(int argc, char** argv) {
    if (argc != 5 && argc != 6) {
        std::fprintf(stderr, "usage: long_scan FILE LENGTH_MM DPI HEIGHT_PX [CORES]\n");
        return 2;
    }
    const double length_mm = std::atof(argv[2]);
    const double dpi = std::atof(argv[3]);
    const auto rendering = demo::render(core_of(length_mm, dpi));
    if (!rendering) {
        std::fprintf(stderr, "%s\n", rendering.error().line().c_str());
        return 2;
    }
    const int width = static_cast<int>(std::lround(length_mm / 25.4 * dpi));
    std::printf("rendered %d x %d, cut to %d x %s\n", rendering->picture.width, rendering->picture.height, width,
                argv[4]);
    const int cores = argc == 6 ? std::max(1, std::atoi(argv[5])) : 1;
    const auto written = demo::write_image(
        argv[1], stacked(fitted(rendering->picture, width, std::atoi(argv[4])), cores), demo::Format::TiffLzw);
    if (!written) {
        std::fprintf(stderr, "%s\n", written.error().line().c_str());
        return 2;
    }
    return 0;
}
