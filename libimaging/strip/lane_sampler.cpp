#include "libimaging/strip/lane_sampler.h"

#include "libimaging/strip/sweep.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>
#include <type_traits>
#include <vector>

namespace pithward::strip {

namespace {

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

/// Shares between pixels are counted in 256ths: whole numbers are quicker than floating ones.
constexpr int share_bits = 8;
constexpr int one = 1 << share_bits;

/// The pixels of one block, those of the scan from `origin` on.
template <typename Value>
class Block {
public:
    /// Holds a value times `one` squared.
    using Number = std::conditional_t<sizeof(Value) == 1, std::int32_t, std::int64_t>;
    using Sums = std::array<std::int64_t, 3>;

    Block(const cv::Mat& pixels, cv::Point origin)
        : pixels_(pixels)
        , origin_{static_cast<double>(origin.x), static_cast<double>(origin.y)} {}

    /// Adds up `count` rows of one column from row `first` on (0 is the middle one), in units of `one` squared.
    /// `inside` says that all of the pixels needed are there.
    [[nodiscard]] Sums sum(const Sweep& sweep, double first, int count, bool inside) const {
        const ImagePoint start = sweep.at(first) - origin_;
        Sums sums{};
        for (int row = 0; row < count; ++row) {
            const ImagePoint at = start + sweep.step * row;
            if (inside) {
                add_inside(at, sums);
            } else {
                add_any(at, sums);
            }
        }
        return sums;
    }

private:
    /// The nearest number of 256ths. A share is never negative, so cutting off is rounding down.
    static Number share(double of_pixel) {
        return static_cast<Number>(of_pixel * one + 0.5); // NOLINT(bugprone-incorrect-roundings): lround is slower
    }
    void add_inside(ImagePoint at, Sums& sums) const {
        const int x = static_cast<int>(at.x); // rounds down: never negative here
        const int y = static_cast<int>(at.y);
        const Number fx = share(at.x - x);
        const Number fy = share(at.y - y);
        const Value* upper = pixels_.ptr<Value>(y) + 3 * x;
        const Value* lower = pixels_.ptr<Value>(y + 1) + 3 * x;
        for (std::size_t c = 0; c < 3; ++c) {
            sums[c] += mixed(upper[c], upper[c + 3], lower[c], lower[c + 3], fx, fy);
        }
    }
    void add_any(ImagePoint at, Sums& sums) const {
        const int x = static_cast<int>(std::floor(at.x));
        const int y = static_cast<int>(std::floor(at.y));
        const Number fx = share(at.x - x);
        const Number fy = share(at.y - y);
        for (int c = 0; c < 3; ++c) {
            sums[static_cast<std::size_t>(c)] +=
                mixed(value(x, y, c), value(x + 1, y, c), value(x, y + 1, c), value(x + 1, y + 1, c), fx, fy);
        }
    }
    [[nodiscard]] static Number mixed(Value a, Value b, Value c, Value d, Number fx, Number fy) {
        const Number upper = Number{a} * one + fx * (Number{b} - Number{a});
        const Number lower = Number{c} * one + fx * (Number{d} - Number{c});
        return upper * one + fy * (lower - upper);
    }
    [[nodiscard]] Value value(int x, int y, int c) const {
        const bool outside = x < 0 || y < 0 || x >= pixels_.cols || y >= pixels_.rows;
        return outside ? Value{0} : pixels_.ptr<Value>(y)[3 * x + c];
    }

    const cv::Mat& pixels_;
    ImagePoint origin_;
};

template <typename Value>
void average(const cv::Mat& pixels, const cv::Rect& region, bool inside, const std::vector<Sweep>& sweeps,
             const StripGrid& grid, int rows_per_lane, int from, std::array<cv::Mat1f, 3>& lanes) {
    const Block<Value> block(pixels, region.tl());
    const double scale = 1.0 / (double{std::numeric_limits<Value>::max()} * one * one * rows_per_lane);
    for (int lane = 0; lane < lanes[0].rows; ++lane) {
        const double first = lane * rows_per_lane - 0.5 * (grid.rows - 1);
        for (std::size_t k = 0; k < sweeps.size(); ++k) {
            const auto sums = block.sum(sweeps[k], first, rows_per_lane, inside);
            for (std::size_t c = 0; c < 3; ++c) {
                lanes[c](lane, from + static_cast<int>(k)) = static_cast<float>(static_cast<double>(sums[c]) * scale);
            }
        }
    }
}

/// Columns `from` on of `lanes`, as the pixels say.
Outcome<void> sample_pixels(const ScanFile& scan, const std::vector<Sweep>& sweeps, const StripGrid& grid,
                            int rows_per_lane, int from, LanePiece& lanes) {
    const cv::Rect all = needed(sweeps, 0.5 * (grid.rows - 1));
    const cv::Rect region = all & cv::Rect(0, 0, scan.header().width, scan.header().height);
    if (region.empty()) {
        for (cv::Mat1f& channel : lanes) {
            channel.colRange(from, from + static_cast<int>(sweeps.size())) = 0.0F;
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

} // namespace

Outcome<void> sample_lanes(const ScanFile& scan, const StripGeometry& geometry, const StripGrid& grid,
                           int rows_per_lane, int from, int to, LanePiece& lanes, KeptPieces* kept) {
    const std::vector<Sweep> sweeps = sweeps_of(geometry, grid, from, to);
    if (kept == nullptr) {
        return sample_pixels(scan, sweeps, grid, rows_per_lane, from, lanes);
    }
    const PieceKey key = key_of(sweeps, grid.rows, rows_per_lane);
    if (const auto piece = kept->find(key)) {
        for (std::size_t c = 0; c < lanes.size(); ++c) {
            (*piece)[c].copyTo(lanes[c].colRange(from, to));
        }
        return {};
    }
    if (auto sampled = sample_pixels(scan, sweeps, grid, rows_per_lane, from, lanes); !sampled) {
        return sampled;
    }
    LanePiece piece;
    for (std::size_t c = 0; c < lanes.size(); ++c) {
        piece[c] = lanes[c].colRange(from, to).clone();
    }
    kept->keep(key, piece);
    return {};
}

} // namespace pithward::strip
