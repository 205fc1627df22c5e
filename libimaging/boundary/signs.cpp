#include "libimaging/boundary/signs.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pithward::boundary {

namespace {

double strength(const Mark& mark) {
    return mark.signs.fall / (0.05 + mark.signs.edge_mm) * mark.signs.support;
}

double median_of(std::vector<double> values) {
    if (values.empty()) {
        return 0.0;
    }
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
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

} // namespace pithward::boundary
