#include "libcore/pith/pith_posterior.h"

#include "libcore/pith/weigher.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pithward::pith {

namespace {

constexpr double nearest_mm = 0.2;

/// An evenly cut range of log distance.
struct Range {
    double from = std::log(nearest_mm);
    double to = std::log(farthest_mm);
    int count = 25;
    [[nodiscard]] double step() const { return (to - from) / count; }
    [[nodiscard]] double at(int i) const { return from + step() * (i + 0.5); }
};

/// The part of a range in which circles are not negligible, with a margin.
Range part_of(const Range& range, const std::vector<Circle>& circles, int count) {
    constexpr double negligible = 8.0;
    const double best = std::ranges::max_element(circles, {}, &Circle::log_weight)->log_weight;
    int first = range.count;
    int last = 0;
    for (int i = 0; i < range.count; ++i) {
        if (circles[static_cast<std::size_t>(i)].log_weight > best - negligible) {
            first = std::min(first, i);
            last = std::max(last, i);
        }
    }
    const double margin = 1.5 * range.step();
    return {std::max(range.from, range.at(first) - margin), std::min(range.to, range.at(last) + margin), count};
}

} // namespace

PithPosterior::PithPosterior(std::vector<PithPlace> places)
    : places_(std::move(places)) {
    std::ranges::sort(places_, {}, &PithPlace::distance_mm);
}

double PithPosterior::distance_quantile(double share) const {
    // Places of one distance are a step of the grid; between steps the share grows evenly.
    double sum = 0.0;
    double half_before = 0.0;
    double before = places_.front().distance_mm;
    for (std::size_t i = 0; i < places_.size();) {
        const double distance = places_[i].distance_mm;
        double step = 0.0;
        for (; i < places_.size() && places_[i].distance_mm == distance; ++i) {
            step += places_[i].probability;
        }
        const double here = sum + 0.5 * step; // share below the step's middle
        if (here >= share) {
            const double way = std::max(here - half_before, 1e-12);
            return before + (distance - before) * std::clamp((share - half_before) / way, 0.0, 1.0);
        }
        sum += step;
        half_before = here;
        before = distance;
    }
    return before;
}

Eigen::Vector2d PithPosterior::middle() const {
    const double distance = distance_quantile(0.5);
    double sum = 0.0;
    double angle = 0.0;
    for (const PithPlace& place : places_) {
        const double off = std::log(place.distance_mm / distance) / 0.1;
        const double weight = place.probability * std::exp(-0.5 * off * off);
        sum += weight;
        angle += weight * place.angle;
    }
    angle = sum > 0.0 ? angle / sum : 0.0;
    return {distance * std::cos(angle), distance * std::sin(angle)};
}

double PithPosterior::swell_mm() const {
    double sum = 0.0;
    for (const PithPlace& place : places_) {
        sum += place.probability * place.log_swell;
    }
    return std::exp(sum);
}

PithPosterior pith_posterior(std::span<const Arc> arcs, const Work& work) {
    const Weigher first_look(arcs, few_swells());
    const Weigher weigher(arcs, all_swells());
    Range range;
    std::vector<Circle> circles(static_cast<std::size_t>(range.count));
    work.share_out(range.count, [&](int i) {
        const double distance = std::exp(range.at(i));
        circles[static_cast<std::size_t>(i)] =
            first_look.rough_circle(distance, first_look.guess(distance), Weigher::guess_step);
    });
    constexpr double fine_enough = 0.06; // of log distance
    constexpr int most_rounds = 3;
    bool fine = false;
    for (int round = 1; !fine; ++round) {
        const Range part = part_of(range, circles, 21);
        fine = part.step() <= fine_enough || round == most_rounds;
        std::vector<Circle> finer(static_cast<std::size_t>(part.count));
        work.share_out(part.count, [&](int i) {
            const auto near = static_cast<int>((part.at(i) - range.from) / range.step());
            const double guess =
                circles[static_cast<std::size_t>(std::clamp(near, 0, range.count - 1))].likeliest_angle;
            const double distance = std::exp(part.at(i));
            finer[static_cast<std::size_t>(i)] = fine
                                                     ? weigher.circle(distance, guess, 0.5 * Weigher::guess_step)
                                                     : weigher.rough_circle(distance, guess, 0.5 * Weigher::guess_step);
        });
        range = part;
        circles = std::move(finer);
    }
    const double top = std::ranges::max_element(circles, {}, &Circle::log_weight)->log_weight;
    std::vector<PithPlace> places;
    double sum = 0.0;
    for (const Circle& circle : circles) {
        const double weight = std::exp(circle.log_weight - top);
        sum += weight;
        for (PithPlace place : circle.places) {
            place.probability *= weight;
            places.push_back(place);
        }
    }
    for (PithPlace& place : places) {
        place.probability /= sum;
    }
    return PithPosterior(std::move(places));
}

} // namespace pithward::pith
