#include "demo-scans/maker/growth.h"

#include "demo-scans/maker/random.h"

#include <algorithm>
#include <cmath>

namespace pithward::demo {

namespace {

constexpr double least_radius_to_offset = 1.5; // the innermost boundary crosses the path at 42 degrees at most
constexpr double microscopic_ring_mm = 0.09;

double shock(std::uint64_t seed, int year) {
    const std::uint64_t hash = mix(seed, static_cast<std::uint64_t>(static_cast<std::int64_t>(year) + 100'000));
    // One year in twelve is a poor one that every tree of the site shows.
    const double poor = unit(mix(hash, 1)) < 0.08 ? -1.3 : 0.104;
    return bell(hash) * 0.93 + poor;
}

bool named(const std::vector<int>& years, int year) {
    return std::find(years.begin(), years.end(), year) != years.end();
}

double suppression(const std::vector<Years>& stretches, int year) {
    double factor = 1.0;
    for (const Years& stretch : stretches) {
        if (year >= stretch.from && year <= stretch.to) {
            factor *= stretch.strength;
        }
    }
    return factor;
}

std::vector<double> given_widths(const Scene& scene, int inner) {
    std::vector<double> outward(scene.widths_mm.rbegin(), scene.widths_mm.rend());
    const auto some = static_cast<std::ptrdiff_t>(std::min<std::size_t>(outward.size(), 8));
    double mean = 0.0;
    for (auto it = outward.begin(); it != outward.begin() + some; ++it) {
        mean += *it / static_cast<double>(some);
    }
    Random random(scene.seed, 71);
    std::vector<double> all(static_cast<std::size_t>(inner));
    for (double& width : all) {
        width = std::max(0.4, mean) * random.uniform(0.85, 1.15);
    }
    all.insert(all.end(), outward.begin(), outward.end());
    return all;
}

std::vector<double> widths_outward(const Scene& scene, int inner) {
    if (!scene.widths_mm.empty()) {
        return given_widths(scene, inner);
    }
    return grow(scene.growth, scene.seed, scene.growth.rings + inner, scene.last_year.value());
}

} // namespace

double year_signal(std::uint64_t seed, int year, double persistence) {
    // A moving average of past shocks with falling weights: an AR(1) cut off where nothing is left of it.
    double sum = 0.0;
    double weight = std::sqrt(1.0 - persistence * persistence);
    for (int back = 0; back < 24; ++back) {
        sum += weight * shock(seed, year - back);
        weight *= persistence;
    }
    return sum;
}

std::vector<double> grow(const Growth& growth, std::uint64_t seed, int count, int last_year) {
    const std::uint64_t site = growth.site_seed != 0 ? growth.site_seed : mix(seed, 11);
    const std::uint64_t tree = growth.tree_seed != 0 ? growth.tree_seed : mix(seed, 12);
    const std::uint64_t core = mix(seed, 13);
    const double own_share = std::max(0.0, 1.0 - growth.site_share - growth.tree_share);
    std::vector<double> widths;
    widths.reserve(static_cast<std::size_t>(count));
    for (int age = 0; age < count; ++age) {
        const int year = last_year - (count - 1 - age);
        const double trend =
            growth.mean_mm * (1.0 + growth.juvenile * std::exp(-age / growth.trend_years)) * (age == 0 ? 0.8 : 1.0);
        const double signal = std::sqrt(growth.site_share) * year_signal(site, year, growth.persistence) +
                              std::sqrt(growth.tree_share) * year_signal(tree, year, 0.6) +
                              std::sqrt(own_share) * year_signal(core, year, 0.2);
        const double s = growth.sensitivity;
        widths.push_back(std::max(0.06, trend * std::exp(s * signal - 0.5 * s * s)));
    }
    return widths;
}

std::vector<PlannedRing> plan_rings(const Scene& scene) {
    int inner = std::max(0, scene.rings_to_pith);
    std::vector<double> widths = widths_outward(scene, inner);
    if (inner > 0) {
        const auto radius = [&] {
            double sum = 0.0;
            for (int k = 0; k < inner; ++k) {
                sum += widths[static_cast<std::size_t>(k)];
            }
            return sum;
        };
        while (radius() < least_radius_to_offset * std::abs(scene.pith_offset_mm) && inner < 400) {
            widths = widths_outward(scene, ++inner);
        }
    }
    const Disturbances& d = scene.disturbances;
    std::vector<PlannedRing> plan;
    const int count = static_cast<int>(widths.size());
    for (int k = 0; k < count; ++k) {
        PlannedRing ring{.year = scene.last_year.value() - (count - 1 - k),
                         .width_mm = widths[static_cast<std::size_t>(k)],
                         .on_core = k >= inner};
        if (scene.widths_mm.empty()) {
            ring.width_mm *= suppression(d.narrow, ring.year);
            ring.width_mm = named(d.micro, ring.year) ? microscopic_ring_mm : ring.width_mm;
            ring.width_mm = named(d.wedging, ring.year) ? std::min(0.45 * ring.width_mm, 0.4) : ring.width_mm;
            ring.width_mm = named(d.absent, ring.year) ? 0.0 : ring.width_mm;
        }
        ring.wedging = named(d.wedging, ring.year) && ring.width_mm > 0.0;
        plan.push_back(ring);
    }
    if (scene.unfinished_mm > 0.0) {
        plan.push_back({.year = scene.last_year.value() + 1, .width_mm = scene.unfinished_mm, .complete = false});
    }
    return plan;
}

} // namespace pithward::demo
