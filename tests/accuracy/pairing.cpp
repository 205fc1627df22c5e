#include "tests/accuracy/pairing.h"

#include <algorithm>
#include <cmath>

namespace pithward::accuracy {

namespace {

/// What the best pairing of the first so many true and found places comes to.
struct Sum {
    int pairs = 0;
    double distance = 0.0;
};

bool better(const Sum& a, const Sum& b) {
    return a.pairs != b.pairs ? a.pairs > b.pairs : a.distance < b.distance;
}

} // namespace

std::vector<Pair> paired(std::span<const TruePlace> truth, std::span<const double> found_px) {
    enum class Step : unsigned char { SkipTruth, SkipFound, Take };
    const std::size_t breadth = found_px.size() + 1;
    std::vector<Sum> best((truth.size() + 1) * breadth);
    std::vector<Step> steps(best.size(), Step::SkipTruth);
    for (std::size_t i = 1; i <= truth.size(); ++i) {
        for (std::size_t j = 1; j < breadth; ++j) {
            const std::size_t here = i * breadth + j;
            best[here] = best[here - breadth];
            if (better(best[here - 1], best[here])) {
                best[here] = best[here - 1];
                steps[here] = Step::SkipFound;
            }
            const TruePlace& place = truth[i - 1];
            const double distance = std::abs(place.s_px - found_px[j - 1]);
            if (distance <= place.reach_px) {
                const Sum& before = best[here - breadth - 1];
                const Sum taken{before.pairs + 1, before.distance + distance / place.reach_px};
                if (better(taken, best[here])) {
                    best[here] = taken;
                    steps[here] = Step::Take;
                }
            }
        }
    }
    std::vector<Pair> pairs;
    for (std::size_t i = truth.size(), j = found_px.size(); i > 0 && j > 0;) {
        const Step step = steps[i * breadth + j];
        if (step == Step::Take) {
            pairs.push_back({i - 1, j - 1});
        }
        i -= step == Step::SkipFound ? 0 : 1;
        j -= step == Step::SkipTruth ? 0 : 1;
    }
    std::ranges::reverse(pairs);
    return pairs;
}

} // namespace pithward::accuracy
