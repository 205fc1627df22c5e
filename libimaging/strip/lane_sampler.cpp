#include "libimaging/strip/lane_sampler.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>
#include <vector>

namespace pithward::strip {

namespace {

/// Where one column of the strip runs on the scan: its middle, and the step from one row to the next.
struct Sweep {
    ImagePoint middle;
    ImagePoint step;

    [[nodiscard]] ImagePoint at(double rows_from_middle) const { return middle + step * rows_from_middle; }
};

std::vector<Sweep> sweeps_of(const StripGeometry& geometry, const StripGrid& grid, int from, int to) {
    std::vector<Sweep> sweeps;
    sweeps.reserve(static_cast<std::size_t>(to - from));
    for (int column = from; column < to; ++column) {
        const double s = grid.s(column);
        const ImagePoint middle = geometry.image_point({s, 0.0});
        sweeps.push_back({middle, (geometry.image_point({s, 1.0}) - middle) * grid.px_mm});
    }
    return sweeps;
}

/// The pixels from which all places of the sweeps are interpolated; may reach beyond the scan.
cv::Rect needed(const std::vector<Sweep>& sweeps, double half_rows) {
    double left = sweeps.front().middle.x;
    double top = sweeps.front().middle.y;
    double right = left;
    double bottom = top;
    for (const Sweep& sweep : sweeps) {
        for (const ImagePoint end : {sweep.at(-half_rows), sweep.at(half_rows)}) {
            left = std::min(left, end.x);
            right = std::max(right, end.x);
            top = std::min(top, end.y);
            bottom = std::max(bottom, end.y);
        }
    }
    const auto bounded = [](double value) { return static_cast<int>(std::clamp(value, -1e8, 1e8)); };
    const cv::Point first(bounded(std::floor(left)) - 1, bounded(std::floor(top)) - 1);
    return {first, cv::Point(bounded(std::ceil(right)) + 2, bounded(std::ceil(bottom)) + 2)};
}

template <typename Value>
class Block {
public:
    /// `pixels` are those of the scan from `origin` on.
    Block(const cv::Mat& pixels, cv::Point origin)
        : pixels_(pixels)
        , origin_(origin) {}

    /// Adds up the rows `first` to `last` (exclusive, from the middle row) of one column.
    [[nodiscard]] std::array<float, 3> sum(const Sweep& sweep, double first, int count, bool inside) const {
        std::array<float, 3> sum{};
        const ImagePoint start = sweep.at(first) - ImagePoint{double(origin_.x), double(origin_.y)};
        for (int row = 0; row < count; ++row) {
            const ImagePoint at = start + sweep.step * row;
            const int x = static_cast<int>(std::floor(at.x));
            const int y = static_cast<int>(std::floor(at.y));
            const auto fx = static_cast<float>(at.x - x);
            const auto fy = static_cast<float>(at.y - y);
            if (inside) {
                const Value* upper = pixels_.ptr<Value>(y) + 3 * x;
                const Value* lower = pixels_.ptr<Value>(y + 1) + 3 * x;
                for (std::size_t c = 0; c < 3; ++c) {
                    sum[c] += mixed(upper[c], upper[c + 3], lower[c], lower[c + 3], fx, fy);
                }
            } else {
                for (int c = 0; c < 3; ++c) {
                    sum[static_cast<std::size_t>(c)] +=
                        mixed(value(x, y, c), value(x + 1, y, c), value(x, y + 1, c), value(x + 1, y + 1, c), fx, fy);
                }
            }
        }
        return sum;
    }

private:
    [[nodiscard]] static float mixed(Value a, Value b, Value c, Value d, float fx, float fy) {
        const float upper = static_cast<float>(a) + fx * (static_cast<float>(b) - static_cast<float>(a));
        const float lower = static_cast<float>(c) + fx * (static_cast<float>(d) - static_cast<float>(c));
        return upper + fy * (lower - upper);
    }
    [[nodiscard]] Value value(int x, int y, int c) const {
        const bool outside = x < 0 || y < 0 || x >= pixels_.cols || y >= pixels_.rows;
        return outside ? Value{0} : pixels_.ptr<Value>(y)[3 * x + c];
    }

    const cv::Mat& pixels_;
    cv::Point origin_;
};

template <typename Value>
void average(const cv::Mat& pixels, const cv::Rect& region, bool inside, const std::vector<Sweep>& sweeps,
             const StripGrid& grid, int rows_per_lane, int from, std::array<cv::Mat1f, 3>& lanes) {
    const Block<Value> block(pixels, region.tl());
    const float scale =
        1.0F / (static_cast<float>(std::numeric_limits<Value>::max()) * static_cast<float>(rows_per_lane));
    for (int lane = 0; lane < lanes[0].rows; ++lane) {
        const double first = lane * rows_per_lane - 0.5 * (grid.rows - 1);
        for (std::size_t k = 0; k < sweeps.size(); ++k) {
            const std::array<float, 3> sum = block.sum(sweeps[k], first, rows_per_lane, inside);
            for (std::size_t c = 0; c < 3; ++c) {
                lanes[c](lane, from + static_cast<int>(k)) = sum[c] * scale;
            }
        }
    }
}

} // namespace

Outcome<void> sample_lanes(const ScanFile& scan, const StripGeometry& geometry, const StripGrid& grid,
                           int rows_per_lane, int from, int to, std::array<cv::Mat1f, 3>& lanes) {
    const Scan& header = scan.header();
    const std::vector<Sweep> sweeps = sweeps_of(geometry, grid, from, to);
    const cv::Rect all = needed(sweeps, 0.5 * (grid.rows - 1));
    const cv::Rect region = all & cv::Rect(0, 0, header.width, header.height);
    if (region.empty()) {
        for (cv::Mat1f& channel : lanes) {
            channel.colRange(from, to) = 0.0F;
        }
        return {};
    }
    const auto pixels = scan.read(region);
    if (!pixels) {
        return tl::unexpected(pixels.error());
    }
    const auto fill = pixels->depth() == CV_16U ? average<std::uint16_t> : average<std::uint8_t>;
    fill(*pixels, region, region == all, sweeps, grid, rows_per_lane, from, lanes);
    return {};
}

} // namespace pithward::strip
