#include "libimaging/boundary/wood/edge_place.h"

#include "libimaging/boundary/edge_fit.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace pithward::boundary {

double blur_of(const std::vector<Fall>& falls, double least) {
    std::vector<std::pair<double, double>> edges; // height, breadth
    edges.reserve(falls.size());
    for (const Fall& fall : falls) {
        edges.emplace_back(fall.height, fall.height / std::max(fall.steepest, 1e-9));
    }
    std::ranges::sort(edges, [](const auto& a, const auto& b) { return a.first > b.first; });
    edges.resize((edges.size() + 1) / 2);
    if (edges.empty()) {
        return least;
    }
    const auto sharp = edges.begin() + static_cast<std::ptrdiff_t>(edges.size() / 5);
    std::nth_element(edges.begin(), sharp, edges.end(),
                     [](const auto& a, const auto& b) { return a.second < b.second; });
    return std::max(least, sharp->second / std::sqrt(2.0 * std::numbers::pi));
}

double edge_column(const std::vector<float>& brightness, const Fall& fall, double blur, double dark_columns) {
    const double light = static_cast<double>(brightness[static_cast<std::size_t>(fall.top)]);
    const double dark = static_cast<double>(brightness[static_cast<std::size_t>(fall.bottom)]);
    double half = fall.column;
    for (int c = fall.top; c < fall.bottom; ++c) {
        const double a = static_cast<double>(brightness[static_cast<std::size_t>(c)]);
        const double b = static_cast<double>(brightness[static_cast<std::size_t>(c) + 1]);
        if (a >= 0.5 * (light + dark) && b < 0.5 * (light + dark)) {
            half = c + (a - 0.5 * (light + dark)) / (a - b);
        }
    }
    const double tail = dark_columns > 0.0 ? dark_columns : fall.bottom - half;
    const int from = std::max(fall.top, static_cast<int>(std::floor(half - 3.0 * blur)));
    const int to = static_cast<int>(std::ceil(half + std::clamp(1.3 * tail, 2.5 * blur, 10.0 * blur)));
    const auto fit =
        fit_edge(brightness, from, to, blur, {half, light, light - dark, tail, std::max(0.4 * tail, blur)});
    return fit ? fit->column : half;
}

} // namespace pithward::boundary
