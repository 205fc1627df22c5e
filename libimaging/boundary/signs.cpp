#include "libimaging/boundary/signs.h"

#include "libimaging/boundary/filters.h"
#include "libimaging/robust/median.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pithward::boundary {

namespace {

double strength(const Mark& mark) {
    return mark.signs.fall / (0.05 + mark.signs.edge_mm) * mark.signs.support;
}

double median_of(std::vector<double> values) {
    return values.empty() ? 0.0 : median_in_place(values);
}

double mean_between(const std::vector<float>& profile, double from, double to) {
    const auto last = static_cast<double>(profile.size() - 1);
    const auto first = static_cast<std::size_t>(std::clamp(std::round(from), 0.0, last));
    const auto end = static_cast<std::size_t>(std::clamp(std::round(to), 0.0, last));
    double sum = 0.0;
    for (std::size_t c = first; c <= end; ++c) {
        sum += static_cast<double>(profile[c]);
    }
    return end >= first ? sum / static_cast<double>(end - first + 1) : 0.0;
}

} // namespace

void compare_with_neighbours(std::vector<Mark>& marks, double px_mm) {
    for (Mark& mark : marks) {
        std::vector<std::pair<double, const Mark*>> near;
        for (const Mark& other : marks) {
            if (std::abs(other.column - mark.column) * px_mm <= neighbourhood_mm) {
                near.emplace_back(strength(other), &other);
            }
        }
        std::ranges::sort(near, [](const auto& a, const auto& b) { return a.first > b.first; });
        near.resize(std::max<std::size_t>(std::min<std::size_t>(near.size(), 3), near.size() / 2));
        std::vector<double> falls;
        std::vector<double> edges;
        for (const auto& [rank, other] : near) {
            falls.push_back(other->signs.fall);
            edges.push_back(other->signs.edge_mm);
        }
        mark.signs.relative_fall = mark.signs.fall / std::max(median_of(falls), 1e-6);
        mark.signs.relative_edge = mark.signs.edge_mm / std::max(median_of(edges), 1e-6);
    }
}

void set_levels(std::vector<Mark>& marks, const std::vector<float>& profile, double window_mm, double px_mm) {
    constexpr double local_mm = 2.5;
    const std::vector<float> local = smooth(profile, local_mm / px_mm);
    const double window = window_mm / px_mm;
    for (Mark& mark : marks) {
        const double half = 0.5 * mark.signs.edge_mm / px_mm;
        const auto c =
            static_cast<std::size_t>(std::clamp(std::round(mark.column), 0.0, static_cast<double>(profile.size() - 1)));
        const double usual = std::max(mark.signs.fall / std::max(mark.signs.relative_fall, 1e-3), 1e-6);
        const auto level = static_cast<double>(local[c]);
        mark.signs.before = (mean_between(profile, mark.column - half - window, mark.column - half) - level) / usual;
        mark.signs.after = (mean_between(profile, mark.column + half, mark.column + half + window) - level) / usual;
    }
}

} // namespace pithward::boundary
