#include "libimaging/strip/strip_picture.h"

#include "libcore/specimen/path_check.h"
#include "libimaging/strip/straighten.h"
#include "libimaging/strip/strip_geometry.h"

#include <opencv2/core.hpp>

#include <algorithm>
#include <cmath>

namespace pithward {

namespace {

void add_light(const cv::Mat& block, std::vector<float>& light) {
    const double white = block.depth() == CV_16U ? 65535.0 : 255.0;
    const int third = block.rows / 3;
    const cv::Mat middle = block.rowRange(third, std::max(third + 1, block.rows - third));
    cv::Mat mean;
    cv::reduce(middle, mean, 0, cv::REDUCE_AVG, CV_32F);
    for (int i = 0; i < mean.cols; ++i) {
        const auto& rgb = mean.at<cv::Vec3f>(0, i);
        const double luma = 0.299 * double{rgb[0]} + 0.587 * double{rgb[1]} + 0.114 * double{rgb[2]};
        light.push_back(static_cast<float>(luma / white));
    }
}

} // namespace

Outcome<StripPicture> strip_picture(const ScanFile& scan, const StripRequest& request, const Work& work) {
    if (auto fault = fault_of_path(request.path, scan.header(), request.calibration)) {
        return tl::unexpected(*fault);
    }
    if (!(request.half_breadth_mm > 0.0 && request.half_breadth_mm <= 20.0) || request.most_columns < 1) {
        return fail(scan.header().file, "this breadth or length of a strip can't be shown", "ask for less");
    }
    const StripGeometry geometry(request.path, request.calibration);
    StripPicture picture;
    picture.px_mm = std::max(1.0 / request.calibration.px_per_mm(), geometry.length_mm() / request.most_columns);
    StripGrid grid;
    grid.px_mm = picture.px_mm;
    grid.start_mm = 0.5 * picture.px_mm;
    grid.columns = std::max(1, static_cast<int>(geometry.length_mm() / picture.px_mm));
    grid.rows = 2 * static_cast<int>(request.half_breadth_mm / picture.px_mm) + 1;
    std::vector<cv::Mat> blocks;
    picture.light.reserve(static_cast<std::size_t>(grid.columns));
    for (int from = 0; from < grid.columns; from += greatest_block) {
        if (work.stopped()) {
            return fail(scan.header().file, "stopped", "");
        }
        const auto block = straighten(scan, geometry, grid, from, std::min(grid.columns, from + greatest_block));
        if (!block) {
            return tl::unexpected(block.error());
        }
        add_light(*block, picture.light);
        blocks.push_back(*block);
        work.report(static_cast<double>(from) / grid.columns);
    }
    cv::hconcat(blocks, picture.rgb);
    return picture;
}

} // namespace pithward
