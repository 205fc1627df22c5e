#include "libimaging/boundary/round_texture.h"

#include "libimaging/boundary/filters.h"
#include "libimaging/boundary/grain_direction.h"

#include <opencv2/core/utility.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <complex>
#include <vector>

namespace pithward::boundary {

namespace {

using Angle4 = std::complex<float>; ///< Coherence times the unit vector of four times the gradient's angle.

constexpr double fine_mm = 0.1;         ///< Columns are averaged to about this.
constexpr double cell_mm = 0.3;         ///< One look of the field.
constexpr double around_mm = 10.0;      ///< So far round a centre the texture has a say.
constexpr double pith_mm = 0.6;         ///< Nearer to it directions mean nothing.
constexpr double beyond_mm = 6.0;       ///< Centres are sought so far beyond the ends.
constexpr double aside_step = 0.4;      ///< Steps across, mm.
constexpr double most_slant = 0.5;      ///< Straight rings lean by at most this, in radians.
constexpr std::array scales{0.12, 0.3}; ///< Of the gradients, mm.

/// The field of directions, one row for each cell across.
struct Field {
    std::vector<std::vector<Angle4>> rows;
    std::vector<double> u_mm;
    double step_mm = cell_mm;

    [[nodiscard]] int columns() const { return static_cast<int>(rows.front().size()); }
};

Field field_of(const cv::Mat1f& tone, const Lanes& lanes) {
    const int step = std::max(1, static_cast<int>(std::lround(fine_mm / lanes.px_mm)));
    const double px_mm = lanes.px_mm * step;
    const cv::Mat1f fine = shorten(tone, step);
    const cv::Mat1f flat = without_light(fine, px_mm);
    cv::Mat1f cosine = cv::Mat1f::zeros(flat.size());
    cv::Mat1f sine = cv::Mat1f::zeros(flat.size());
    for (const double scale : scales) {
        const GrainDirection grain = grain_direction(flat, px_mm, lanes.lane_mm, scale);
        for (int row = 0; row < flat.rows; ++row) {
            for (int c = 0; c < flat.cols; ++c) {
                const float re = grain.cosine(row, c);
                const float im = grain.sine(row, c);
                const float share = 1.0F / (std::max(std::hypot(re, im), 1e-12F) * static_cast<float>(scales.size()));
                cosine(row, c) += share * (re * re - im * im);
                sine(row, c) += share * 2.0F * re * im;
            }
        }
    }
    const int columns = std::max(1, static_cast<int>(std::lround(cell_mm / px_mm)));
    const int rows = std::max(1, static_cast<int>(std::lround(cell_mm / lanes.lane_mm)));
    Field field;
    field.step_mm = columns * px_mm;
    for (int row = rows / 2; row < flat.rows; row += rows) {
        field.u_mm.push_back(lanes.u(row));
        std::vector<Angle4>& line = field.rows.emplace_back();
        for (int c = columns / 2; c < flat.cols; c += columns) {
            line.emplace_back(cosine(row, c), sine(row, c));
        }
    }
    return field;
}

/// What a centre expects of the cells round it: one row for each of the field's, columns from -reach to reach.
std::vector<std::vector<Angle4>> expected(const Field& field, double aside_mm, int reach) {
    std::vector<std::vector<Angle4>> out;
    for (const double u : field.u_mm) {
        std::vector<Angle4>& line = out.emplace_back();
        for (int j = -reach; j <= reach; ++j) {
            const double toward = -j * field.step_mm;
            const double across = aside_mm - u;
            const auto angle = static_cast<float>(4.0 * std::atan2(across, toward));
            line.push_back(std::hypot(toward, across) > pith_mm ? std::polar(1.0F, angle) : Angle4{});
        }
    }
    return out;
}

/// Agreement of the cells of columns `from` to `to` (exclusive, on the field) with what a centre at `at` expects.
double agreement(const Field& field, const std::vector<std::vector<Angle4>>& hoped, int at, int from, int to,
                 int reach) {
    double sum = 0.0;
    for (std::size_t row = 0; row < field.rows.size(); ++row) {
        const Angle4* seen = field.rows[row].data();
        const Angle4* hope = hoped[row].data() + reach - at;
        float line = 0.0F;
        for (int c = from; c < to; ++c) {
            line += seen[c].real() * hope[c].real() + seen[c].imag() * hope[c].imag();
        }
        sum += static_cast<double>(line);
    }
    return sum;
}

/// The best that straight rings of any slant can do over these columns.
double straight_agreement(const std::vector<std::complex<double>>& summed, int from, int to) {
    const std::complex<double> sum = summed[static_cast<std::size_t>(to)] - summed[static_cast<std::size_t>(from)];
    const double slant = std::clamp(0.25 * std::arg(sum), -most_slant, most_slant);
    return std::abs(sum) * std::cos(4.0 * slant - std::arg(sum));
}

} // namespace

std::optional<RoundTexture> round_texture(const cv::Mat1f& tone, const Lanes& lanes) {
    const double length_mm = lanes.columns() * lanes.px_mm;
    if (length_mm < around_mm || lanes.count() * lanes.lane_mm < 4.0 * cell_mm) {
        return std::nullopt;
    }
    const Field field = field_of(tone, lanes);
    const int columns = field.columns();
    std::vector<std::complex<double>> summed(static_cast<std::size_t>(columns) + 1);
    for (int c = 0; c < columns; ++c) {
        std::complex<double> sum;
        for (const auto& row : field.rows) {
            sum += std::complex<double>(row[static_cast<std::size_t>(c)]);
        }
        summed[static_cast<std::size_t>(c) + 1] = summed[static_cast<std::size_t>(c)] + sum;
    }
    const int reach = static_cast<int>(around_mm / field.step_mm);
    const int beyond = static_cast<int>(beyond_mm / field.step_mm);
    const double most_aside = std::abs(field.u_mm.front());
    std::vector<std::pair<double, std::vector<std::vector<Angle4>>>> centres;
    const int asides = static_cast<int>(2.0 * most_aside / aside_step) + 1;
    for (int k = 0; k < asides; ++k) {
        const double aside = k * aside_step - most_aside;
        centres.emplace_back(aside, expected(field, aside, reach));
    }
    std::vector<RoundTexture> best(static_cast<std::size_t>(columns) + 2 * static_cast<std::size_t>(beyond));
    cv::parallel_for_(cv::Range(-beyond, columns + beyond), [&](const cv::Range& part) {
        for (int at = part.start; at < part.end; ++at) {
            const int middle = std::clamp(at, 0, columns);
            const int from = std::clamp(at - reach, 0, middle);
            const int to = std::clamp(at + reach + 1, middle, columns);
            const double straight_before = straight_agreement(summed, from, middle);
            const double straight_after = straight_agreement(summed, middle, to);
            const int place = at + beyond;
            RoundTexture& here = best[static_cast<std::size_t>(place)];
            here.before = -1e9;
            for (const auto& [aside, hoped] : centres) {
                const double before = agreement(field, hoped, at, from, middle, reach) - straight_before;
                const double after = agreement(field, hoped, at, middle, to, reach) - straight_after;
                if (before + after > here.both()) {
                    here = {lanes.s(0) + (at + 0.5) * field.step_mm, aside, before, after};
                }
            }
        }
    });
    return *std::ranges::max_element(best, {}, &RoundTexture::both);
}

} // namespace pithward::boundary
