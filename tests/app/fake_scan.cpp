#include "tests/app/fake_scan.h"

#include <cmath>
#include <filesystem>
#include <numbers>
#include <thread>

namespace pithward::bench {

namespace {

Calibration fake_calibration() {
    return *Calibration::from_dpi(1200, 1200, Calibration::Source::FileTag);
}

bool named(const std::string& path, const char* start) {
    return std::filesystem::path(path).filename().string().starts_with(start);
}

} // namespace

ReadingRequest fake_request(const std::string& scan_name) {
    ReadingRequest request;
    request.scan_name = scan_name;
    request.calibration = fake_calibration();
    request.path = {{100, 100}, {1900, 100}};
    request.bark_end = {"polarity", 0.99};
    return request;
}

Reading fake_reading(const ReadingRequest& request) {
    Reading reading;
    reading.wood = request.wood.value_or(WoodType::Conifer);
    reading.outer = request.outer;
    reading.last_year = request.last_year;
    reading.bark_end = request.bark_end;
    reading.path.legs.push_back({request.scan_name, request.path, {}});
    reading.calibrations[request.scan_name] = request.calibration;
    const ImagePoint way = request.path.back() - request.path.front();
    const double length = std::hypot(way.x, way.y);
    for (int s = fake_step; s <= static_cast<int>(length); s += fake_step) {
        Boundary boundary;
        boundary.id = {static_cast<std::int64_t>(reading.boundaries.size()) + 1};
        boundary.at = request.path.front() + way * (s / length);
        boundary.tangent = std::numbers::pi / 2.0;
        boundary.sd = Millimetres(0.005);
        boundary.confidence = 0.99;
        boundary.curve = {boundary.at + ImagePoint{0, -60}, boundary.at, boundary.at + ImagePoint{0, 60}};
        reading.boundaries.push_back(boundary);
    }
    Finding finding;
    finding.id = {1};
    finding.at = reading.boundaries.at(10).at;
    finding.reason = "made up";
    reading.findings.push_back(finding);
    return reading;
}

OpenedScan fake_scan(const std::string& path) {
    OpenedScan scan;
    scan.path = path;
    scan.header.file = path;
    scan.header.width = fake_width;
    scan.header.height = fake_height;
    scan.header.bands = 3;
    scan.header.tag_dpi_x = scan.header.tag_dpi_y = 1200.0;
    scan.pixels = [](QRect region, int reduction) -> Outcome<QImage> {
        QImage tile(region.size() / reduction, QImage::Format_RGB32);
        tile.fill(QColor(200, 150, 90));
        return tile;
    };
    const std::string name = scan.name();
    scan.find_cores = [name](const Calibration&, const Work&) -> Outcome<std::vector<FoundCore>> {
        const ReadingRequest request = fake_request(name);
        return std::vector{FoundCore{request.path, request.bark_end, 2.6, std::nullopt, std::nullopt}};
    };
    scan.near = [](const NearRequest& request) -> Outcome<std::optional<Candidate>> {
        // The fake wood shows a boundary at every `fake_step` from the first point, and nothing beside the core.
        const double steps = (request.at.x - request.path.front().x) / fake_step;
        if (std::abs(steps - std::round(steps)) > 0.2) {
            return std::nullopt;
        }
        Candidate candidate;
        candidate.at = {request.path.front().x + std::round(steps) * fake_step, request.path.front().y};
        candidate.tangent = std::numbers::pi / 2.0;
        candidate.sd = Millimetres(0.004);
        candidate.confidence = 0.9;
        candidate.curve = {candidate.at + ImagePoint{0, -60}, candidate.at, candidate.at + ImagePoint{0, 60}};
        return candidate;
    };
    scan.strip = [](const StripRequest& request, const Work&) -> Outcome<StripImage> {
        const double length = std::abs(request.path.back().x - request.path.front().x);
        StripImage strip{QImage(static_cast<int>(length), 60, QImage::Format_RGB32), {}, 0.0};
        strip.picture.fill(QColor(200, 150, 90));
        strip.light.assign(static_cast<std::size_t>(length), 0.5F);
        strip.length_mm = length / request.calibration.px_per_mm();
        return strip;
    };
    scan.ruler = [](const std::optional<RulerLine>& line, const std::optional<Calibration>&,
                    const Work&) -> Outcome<std::optional<RulerReading>> {
        if (!line) {
            return std::optional<RulerReading>(); // none to be found
        }
        RulerReading reading;
        reading.scale.marks = 41;
        reading.calibration = *Calibration::from_dpi(1190, 1190, Calibration::Source::Ruler);
        reading.disagreement = "the ruler says 0.8 % less than the file";
        return std::optional(reading);
    };
    scan.is_damaged = [] { return false; };
    scan.propose = [](const ReadingRequest& request, const Work&) -> Outcome<Reading> { return fake_reading(request); };
    return scan;
}

Outcome<OpenedScan> open_fake(const std::string& path) {
    if (named(path, "wrong")) {
        return fail(path, "this is not an image", "give a TIFF, PNG or JPEG file");
    }
    OpenedScan scan = fake_scan(path);
    if (named(path, "untold")) {
        scan.header.tag_dpi_x.reset();
        scan.header.tag_dpi_y.reset();
    }
    if (named(path, "broken")) {
        const auto broken = fail(path, "the image data is damaged or cut short", "take an undamaged copy");
        scan.pixels = [broken](QRect, int) -> Outcome<QImage> { return broken; };
        scan.find_cores = [broken](const Calibration&, const Work&) -> Outcome<std::vector<FoundCore>> {
            return broken;
        };
        scan.is_damaged = [] { return true; };
    }
    if (named(path, "slow")) {
        scan.find_cores = [](const Calibration&, const Work& work) -> Outcome<std::vector<FoundCore>> {
            for (int i = 0; !work.stopped(); ++i) {
                work.report((i % 100) / 100.0);
                std::this_thread::sleep_for(std::chrono::milliseconds(2));
            }
            return fail("", "stopped", "");
        };
    }
    return scan;
}

} // namespace pithward::bench
