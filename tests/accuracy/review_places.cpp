#include "tests/accuracy/review_places.h"

#include <algorithm>
#include <cmath>

namespace pithward::accuracy {

namespace {

constexpr double same_place_px = 2.0;
constexpr double stretch_step_mm = 0.25;

/// The places of findings along the path, stretches cut into steps.
std::vector<double> finding_places(const PlacedTruth& truth, std::span<const Finding> findings) {
    std::vector<double> places;
    for (const Finding& finding : findings) {
        const double from = truth.along(finding.at);
        places.push_back(from);
        if (finding.to) {
            const double step = stretch_step_mm * truth.px_per_mm();
            const double to = truth.along(*finding.to);
            for (int i = 1; from + i * step <= to; ++i) {
                places.push_back(from + i * step);
            }
        }
    }
    std::ranges::sort(places);
    return places;
}

} // namespace

bool ReviewPlaces::any_between(double from_px, double to_px) const {
    const auto first = std::ranges::lower_bound(all_px, from_px);
    return first != all_px.end() && *first <= to_px;
}

ReviewPlaces review_places(const PlacedTruth& truth, std::span<const Proposed> proposed,
                           std::span<const Finding> findings) {
    const std::vector<double> found = finding_places(truth, findings);
    const auto near = [](double s, double other) { return std::abs(s - other) <= same_place_px; };
    ReviewPlaces places;
    for (const Proposed& one : proposed) {
        const bool told = std::ranges::any_of(found, [&](double s) { return near(s, one.s_px); });
        places.asked.push_back(one.confidence < sure || told);
        if (places.asked.back()) {
            places.all_px.push_back(one.s_px);
        }
    }
    const std::size_t boundaries = places.all_px.size();
    const double* before = nullptr;
    for (const double& s : found) {
        const bool elsewhere =
            std::none_of(places.all_px.begin(), places.all_px.begin() + static_cast<std::ptrdiff_t>(boundaries),
                         [&](double asked) { return near(s, asked); });
        if (elsewhere) {
            if (before == nullptr || !near(s, *before)) {
                places.all_px.push_back(s);
            }
            before = &s;
        }
    }
    std::ranges::sort(places.all_px);
    return places;
}

} // namespace pithward::accuracy
