#include "libimaging/boundary/inner_end.h"

#include "libimaging/robust/median.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <vector>

namespace pithward::boundary {

namespace {

constexpr double end_breadth_mm = 1.0;  ///< Half breadth of the lanes that are looked at.
constexpr double known_wood_mm = 10.0;  ///< So much of the path tells what wood looks like.
constexpr double piece_of_end_mm = 0.1; ///< Looks are means over such pieces.
constexpr double strange_to = 3.0;      ///< Deviations count up to this, ...
constexpr double usual_squares = 4.0;   ///< ... and half their squares less this speak against wood.
constexpr double enough_against = 8.0;  ///< About three pieces of what is clearly no wood.
constexpr double ragged_mm = 0.2;       ///< The cut across the core is as uneven as this.
constexpr double end_kept_mm = 0.05;    ///< So much beyond the path's end is kept in any case.
constexpr std::array least_deviations{0.03, 0.008, 0.012};

/// Logarithm of the green, red and blue against it.
using Look = std::array<double, 3>;

/// Means over pieces of the middle lanes, from one place to another.
std::vector<Look> looks_along(const Lanes& lanes, double from_mm, double to_mm) {
    const int half = std::min(lanes.centre(), std::max(1, static_cast<int>(end_breadth_mm / lanes.lane_mm)));
    const cv::Range middle(lanes.centre() - half, lanes.centre() + half + 1);
    std::vector<Look> looks;
    for (double at = from_mm; at + piece_of_end_mm <= to_mm; at += piece_of_end_mm) {
        const int first = std::max(0, static_cast<int>(lanes.column(at)));
        const int end = std::min(lanes.columns(), static_cast<int>(lanes.column(at + piece_of_end_mm)) + 1);
        std::array<double, 3> tone{};
        for (std::size_t c = 0; c < tone.size(); ++c) {
            tone[c] = std::log(cv::mean(lanes.rgb[c](middle, cv::Range(first, end)))[0] + 0.01);
        }
        looks.push_back({tone[1], tone[0] - tone[1], tone[2] - tone[1]});
    }
    return looks;
}

/// One quantity of wood: its median and deviation.
struct Usual {
    double middle = 0.0;
    double deviation = 1.0;
};

Usual usual_of(const std::vector<Look>& wood, std::size_t quantity) {
    std::vector<double> values;
    values.reserve(wood.size());
    for (const Look& look : wood) {
        values.push_back(look[quantity]);
    }
    const double middle = median_in_place(values);
    for (double& value : values) {
        value = std::abs(value - middle);
    }
    return {middle, std::max(deviation_of_median * median_in_place(values), least_deviations[quantity])};
}

} // namespace

double inner_end_of_wood(const Lanes& lanes, double path_mm) {
    const double seen_mm = lanes.s(lanes.columns() - 1);
    const std::vector<Look> wood = looks_along(lanes, std::max(0.0, path_mm - known_wood_mm), path_mm);
    const std::vector<Look> beyond = looks_along(lanes, path_mm, seen_mm);
    if (wood.size() < 20) {
        return std::numeric_limits<double>::infinity();
    }
    const std::array usual{usual_of(wood, 0), usual_of(wood, 1), usual_of(wood, 2)};
    double best = enough_against;
    double end_mm = std::numeric_limits<double>::infinity();
    double sum = 0.0;
    for (std::size_t k = beyond.size(); k-- > 0;) {
        double squares = -usual_squares;
        for (std::size_t c = 0; c < usual.size(); ++c) {
            const double off = std::abs(beyond[k][c] - usual[c].middle) / usual[c].deviation;
            squares += 0.5 * std::min(off, strange_to) * std::min(off, strange_to);
        }
        sum += std::clamp(squares, -3.0, 3.0);
        if (sum > best) {
            best = sum;
            end_mm = path_mm + static_cast<double>(k) * piece_of_end_mm;
        }
    }
    return end_mm;
}

Relief ending_with_wood(Relief relief, const Lanes& lanes, double path_mm) {
    const double ragged = inner_end_of_wood(lanes, path_mm) - ragged_mm;
    const double end = lanes.column(std::max(ragged, path_mm + end_kept_mm));
    if (end < relief.solid.cols) {
        const int first = std::max(0, static_cast<int>(end));
        relief.solid.colRange(first, relief.solid.cols).setTo(0.0F);
        relief.level.colRange(first, relief.level.cols).setTo(0.0F);
    }
    return relief;
}

} // namespace pithward::boundary
