#include "tests/accuracy/case_score.h"

#include "tests/accuracy/pairing.h"
#include "tests/accuracy/review_places.h"
#include "tests/accuracy/width_errors.h"

#include <algorithm>
#include <cmath>

namespace pithward::accuracy {

namespace {

constexpr double far_px = 1e9;
constexpr double greatest_look_mm = 3.0; ///< A look this far from a false boundary doesn't show it.

std::vector<Proposed> proposed_on(const PlacedTruth& placed, const Reading& reading) {
    std::vector<Proposed> proposed;
    for (std::size_t i = 0; i < reading.boundaries.size(); ++i) {
        const double s = placed.along(reading.boundaries[i].at);
        if (placed.on_path(s)) {
            proposed.push_back({i, s, reading.boundaries[i].confidence});
        }
    }
    std::ranges::sort(proposed, {}, &Proposed::s_px);
    return proposed;
}

std::vector<double> places_of(const std::vector<Proposed>& proposed) {
    std::vector<double> places;
    places.reserve(proposed.size());
    for (const Proposed& one : proposed) {
        places.push_back(one.s_px);
    }
    return places;
}

/// One core, its places paired.
class Judge {
public:
    Judge(const demo::Truth& truth, const Reading& reading)
        : truth_(truth)
        , reading_(reading)
        , placed_(truth)
        , proposed_(proposed_on(placed_, reading))
        , review_(review_places(placed_, proposed_, reading.findings))
        , pairs_(paired(placed_.places(), places_of(proposed_)))
        , seen_(placed_.places().size())
        , right_(proposed_.size()) {
        for (const Pair& pair : pairs_) {
            seen_[pair.truth] = right_[pair.found] = true;
        }
    }

    [[nodiscard]] CaseScore score(const RingSeries& series) {
        score_.name = truth_.name;
        score_.proposed = static_cast<int>(proposed_.size());
        score_.found = static_cast<int>(pairs_.size());
        score_.places = static_cast<int>(review_.all_px.size());
        judge_found();
        judge_false();
        judge_overlooked();
        judge_turned_down();
        score_.width_z = width_errors(truth_, placed_, proposed_, pairs_, series);
        return std::move(score_);
    }

private:
    void judge_found() {
        for (const Pair& pair : pairs_) {
            const Proposed& one = proposed_[pair.found];
            const double error_px = one.s_px - placed_.places()[pair.truth].s_px;
            const double sd_px = reading_.boundaries[one.boundary].sd.value() * placed_.px_per_mm();
            score_.errors_px.push_back(error_px);
            if (sd_px > 0.0) {
                score_.position_z.push_back(error_px / sd_px);
            }
            score_.chances.push_back({one.confidence, true});
        }
    }

    void judge_false() {
        const auto places = placed_.places();
        for (std::size_t j = 0; j < proposed_.size(); ++j) {
            const Proposed& one = proposed_[j];
            if (right_[j] || placed_.neutral(one.s_px)) {
                continue;
            }
            const auto next = std::ranges::lower_bound(places, one.s_px, {}, &TruePlace::s_px);
            const std::size_t k = static_cast<std::size_t>(next - places.begin());
            const double reach = places.empty() ? 0.0 : places[std::min(k, places.size() - 1)].reach_px;
            const double look = greatest_look_mm * placed_.px_per_mm();
            const double from = std::max(before(k), one.s_px - look) - reach;
            const double to = std::min(after(k), one.s_px + look) + reach;
            const bool caught = review_.asked[j] || review_.any_between(from, to);
            score_.mistakes.push_back({Mistake::Kind::False, reading_.boundaries[one.boundary].at, !caught});
            score_.chances.push_back({one.confidence, false});
        }
    }

    void judge_overlooked() {
        const auto places = placed_.places();
        for (std::size_t i = 0; i < places.size(); ++i) {
            if (!seen_[i]) {
                const double reach = places[i].reach_px;
                const bool caught = review_.any_between(before(i) - reach, after(i + 1) + reach);
                score_.mistakes.push_back(
                    {Mistake::Kind::Overlooked, truth_.boundaries[places[i].boundary].at, !caught});
            }
        }
    }

    void judge_turned_down() {
        const auto places = placed_.places();
        for (const Candidate& candidate : reading_.not_annual) {
            const double s = placed_.along(candidate.at);
            if (placed_.neutral(s)) {
                continue;
            }
            bool annual = false;
            for (std::size_t i = 0; i < places.size() && !annual; ++i) {
                annual = !seen_[i] && std::abs(s - places[i].s_px) <= places[i].reach_px;
            }
            score_.chances.push_back({candidate.confidence, annual});
        }
    }

    /// Where the last true boundary before the k-th lies, and the k-th.
    [[nodiscard]] double before(std::size_t k) const { return k > 0 ? placed_.places()[k - 1].s_px : -far_px; }
    [[nodiscard]] double after(std::size_t k) const {
        return k < placed_.places().size() ? placed_.places()[k].s_px : far_px;
    }

    const demo::Truth& truth_;
    const Reading& reading_;
    PlacedTruth placed_;
    std::vector<Proposed> proposed_;
    ReviewPlaces review_;
    std::vector<Pair> pairs_;
    std::vector<bool> seen_;  ///< Of the true places.
    std::vector<bool> right_; ///< Of the proposed boundaries.
    CaseScore score_;
};

} // namespace

int CaseScore::count(Mistake::Kind kind) const {
    return static_cast<int>(std::ranges::count(mistakes, kind, &Mistake::kind));
}

int CaseScore::escaped() const {
    return static_cast<int>(std::ranges::count(mistakes, true, &Mistake::escaped));
}

CaseScore case_score(const demo::Truth& truth, const Reading& reading, const RingSeries& series) {
    return Judge(truth, reading).score(series);
}

CaseScore unread(const demo::Truth& truth) {
    return case_score(truth, Reading{}, RingSeries{});
}

} // namespace pithward::accuracy
