#include "libimaging/strip/straighten.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <cmath>

namespace pithward {

namespace {

/// Where each strip pixel lies on the scan. The direction across changes slowly: two places a column tell all of its
/// rows.
struct Maps {
    cv::Mat1f x;
    cv::Mat1f y;
};

Maps sample_places(const StripGeometry& geometry, const StripGrid& grid, int from, int to) {
    Maps maps{cv::Mat1f(grid.rows, to - from), cv::Mat1f(grid.rows, to - from)};
    for (int column = from; column < to; ++column) {
        const double s = grid.s(column);
        const ImagePoint centre = geometry.image_point({s, 0.0});
        const ImagePoint step = (geometry.image_point({s, 1.0}) - centre) * grid.px_mm;
        for (int row = 0; row < grid.rows; ++row) {
            const double k = row - 0.5 * (grid.rows - 1);
            maps.x(row, column - from) = static_cast<float>(centre.x + k * step.x);
            maps.y(row, column - from) = static_cast<float>(centre.y + k * step.y);
        }
    }
    return maps;
}

/// The scan region that holds all sampled places, with a margin for the interpolation.
cv::Rect region_of(const Maps& maps, cv::Size scan) {
    double left = 0.0;
    double right = 0.0;
    double top = 0.0;
    double bottom = 0.0;
    cv::minMaxLoc(maps.x, &left, &right);
    cv::minMaxLoc(maps.y, &top, &bottom);
    const auto low = [](double v, int size) {
        return static_cast<int>(std::clamp(std::floor(v) - 2.0, 0.0, double(size)));
    };
    const auto high = [](double v, int size) {
        return static_cast<int>(std::clamp(std::ceil(v) + 3.0, 0.0, double(size)));
    };
    return {cv::Point(low(left, scan.width), low(top, scan.height)),
            cv::Point(high(right, scan.width), high(bottom, scan.height))};
}

} // namespace

Outcome<cv::Mat> straighten(const ScanFile& scan, const StripGeometry& geometry, const StripGrid& grid, int from,
                            int to) {
    to = std::min(to, from + greatest_block);
    const Scan& header = scan.header();
    const Maps maps = sample_places(geometry, grid, from, to);
    const cv::Rect region = region_of(maps, {header.width, header.height});
    if (region.empty()) {
        return cv::Mat(grid.rows, to - from, header.bits == 16 ? CV_16UC3 : CV_8UC3, cv::Scalar::all(0));
    }
    auto pixels = scan.read(region);
    if (!pixels) {
        return pixels;
    }
    cv::Mat out;
    cv::remap(*pixels, out, maps.x - float(region.x), maps.y - float(region.y), cv::INTER_LINEAR, cv::BORDER_CONSTANT);
    return out;
}

} // namespace pithward
