// What finding the boundaries of one strip costs beside two plain operations over the same strip: see docs/speed.md.
// Usage: strip_speed FILE, a scan of long_scan that holds one core over all its length; one thread.
#include "libimaging/boundary/propose_reading.h"
#include "libimaging/scan/scan_file.h"
#include "libimaging/scan/threads.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

namespace {

using namespace pithward;

constexpr int runs = 9;

template <typename Work>
double seconds(Work&& work) {
    const auto begin = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

double median_of(std::vector<double> values) {
    std::ranges::nth_element(values, values.begin() + runs / 2);
    return values[runs / 2];
}

constexpr int piece = 16384; ///< Columns that remap can take at once.

/// Where each pixel of a piece is taken from: a little beside itself.
cv::Mat2f places_of(const cv::Size& size) {
    cv::Mat2f places(size);
    for (int row = 0; row < size.height; ++row) {
        for (int column = 0; column < size.width; ++column) {
            places(row, column) = {static_cast<float>(column) + 0.3F, static_cast<float>(row) + 0.2F};
        }
    }
    return places;
}

/// cv::remap (8UC3, linear) and cv::GaussianBlur (32FC1, sigma 4) over the pixels.
double plain_operations(const cv::Mat& pixels) {
    double sum = 0.0;
    for (int x = 0; x < pixels.cols; x += piece) {
        const cv::Mat part = pixels.colRange(x, std::min(pixels.cols, x + piece));
        const cv::Mat2f places = places_of(part.size());
        cv::Mat1f grey(part.size(), 0.5F);
        cv::Mat moved;
        sum += seconds([&] {
            cv::remap(part, moved, places, cv::noArray(), cv::INTER_LINEAR, cv::BORDER_REPLICATE);
            cv::GaussianBlur(grey, grey, {}, 4.0);
        });
    }
    return sum;
}

} // namespace

int main(int argc, char** argv) {
    if (argc != 2) {
        std::fprintf(stderr, "usage: strip_speed FILE\n");
        return 2;
    }
    use_threads(1);
    const auto scan = ScanFile::open(argv[1]);
    const auto calibration = scan ? believed_calibration(scan->header(), std::nullopt) : tl::unexpected(scan.error());
    if (!calibration) {
        std::fprintf(stderr, "%s\n", calibration.error().line().c_str());
        return 2;
    }
    const Scan& header = scan->header();
    const double y = 0.5 * header.height;
    ReadingRequest request;
    request.scan_name = "strip";
    request.calibration = *calibration;
    request.path = {{0.01 * header.width, y}, {0.985 * header.width, y}};
    request.wood = WoodType::Conifer;
    std::vector<double> plain;
    std::vector<double> reading;
    std::vector<double> finding;
    std::size_t boundaries = 0;
    for (int run = 0; run < runs; ++run) {
        cv::Mat pixels;
        const auto fresh = ScanFile::open(argv[1]);
        reading.push_back(seconds([&] { pixels = *fresh->read({0, 0, header.width, header.height}); }));
        plain.push_back(plain_operations(pixels));
        const auto again = ScanFile::open(argv[1]);
        finding.push_back(seconds([&] {
            const auto found = propose_reading(*again, request);
            boundaries = found ? found->boundaries.size() : 0;
        }));
    }
    const double floor = median_of(plain);
    std::printf("%d x %d px, %zu boundaries, medians of %d: remap and blur %.3f s, reading the file %.3f s, finding "
                "boundaries with reading %.3f s; %.1f times, without reading %.1f times\n",
                header.width, header.height, boundaries, runs, floor, median_of(reading), median_of(finding),
                median_of(finding) / floor, (median_of(finding) - median_of(reading)) / floor);
    return boundaries > 0 ? 0 : 1;
}
