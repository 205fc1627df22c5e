#include "tests/accuracy/figure_table.h"

#include <algorithm>
#include <functional>

namespace pithward::accuracy {

namespace {

using Wanted = std::function<bool(const Case&)>;

Figures figures_where(std::span<const Case> cases, std::span<const CaseScore> scores, const Wanted& wanted) {
    std::vector<CaseScore> some;
    for (std::size_t i = 0; i < cases.size(); ++i) {
        if (wanted(cases[i])) {
            some.push_back(scores[i]);
        }
    }
    return figures_of(some);
}

/// Values in the order in which they first come.
template <typename T, typename Of>
std::vector<T> distinct(std::span<const Case> cases, Of of) {
    std::vector<T> values;
    for (const Case& one : cases) {
        const std::optional<T> value = of(one);
        if (value && std::ranges::find(values, *value) == values.end()) {
            values.push_back(*value);
        }
    }
    return values;
}

} // namespace

std::vector<FigureRow> figure_rows(std::span<const Case> cases, std::span<const CaseScore> scores) {
    std::vector<FigureRow> rows;
    const auto category_of = [](const Case& one) { return std::optional(one.category); };
    for (const std::string& category : distinct<std::string>(cases, category_of)) {
        const auto strength_of = [&](const Case& one) {
            return one.category == category ? one.strength : std::nullopt;
        };
        for (const int strength : distinct<int>(cases, strength_of)) {
            rows.push_back(
                {category + " " + std::to_string(strength),
                 figures_where(cases, scores, [&](const Case& one) { return strength_of(one) == strength; })});
        }
        rows.push_back(
            {category, figures_where(cases, scores, [&](const Case& one) { return one.category == category; })});
    }
    rows.push_back({"all", figures_of(scores)});
    return rows;
}

} // namespace pithward::accuracy
