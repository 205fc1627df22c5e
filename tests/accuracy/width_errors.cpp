#include "tests/accuracy/width_errors.h"

#include <algorithm>
#include <optional>

namespace pithward::accuracy {

namespace {

/// True boundaries between two that count, as indices: (outer, inner).
bool no_break_between(const demo::Truth& truth, std::size_t outer, std::size_t inner) {
    for (std::size_t i = outer + 1; i < inner; ++i) {
        const demo::TrueBoundary& boundary = truth.boundaries[i];
        // A visible one is here only because it is too near the one before it.
        if (!boundary.visible && boundary.why_invisible != "absent" && boundary.why_invisible != "too_thin") {
            return false;
        }
    }
    return true;
}

/// Width between two true boundaries, square to the rings; nothing where lost wood touches it.
std::optional<double> true_width_mm(const demo::Truth& truth, Year outer, Year inner) {
    double sum = 0.0;
    for (const demo::TrueWidth& width : truth.widths) {
        if (width.year > inner && width.year <= outer) {
            if (!width.radial_mm) {
                return std::nullopt;
            }
            sum += *width.radial_mm;
        }
    }
    return sum;
}

const Ring* ring_of(const std::vector<const Ring*>& dated, bool by_order, std::size_t order, Year year) {
    if (by_order) {
        return dated[order];
    }
    const auto found = std::ranges::find_if(dated, [&](const Ring* ring) { return *ring->year == year; });
    return found == dated.end() ? nullptr : *found;
}

} // namespace

std::vector<double> width_errors(const demo::Truth& truth, const PlacedTruth& placed,
                                 std::span<const Proposed> proposed, std::span<const Pair> pairs,
                                 const RingSeries& series) {
    std::vector<const Ring*> dated;
    for (const Ring& ring : series.rings) {
        if (ring.year) {
            dated.push_back(&ring);
        }
    }
    const bool by_order = dated.size() + 1 == proposed.size();
    std::vector<double> errors;
    for (std::size_t k = 0; k + 1 < pairs.size(); ++k) {
        const Pair& a = pairs[k];
        const Pair& b = pairs[k + 1];
        if (b.truth != a.truth + 1 || b.found != a.found + 1) {
            continue;
        }
        const std::size_t outer = placed.places()[a.truth].boundary;
        const std::size_t inner = placed.places()[b.truth].boundary;
        const Year year = truth.boundaries[outer].year;
        const std::optional<double> width = true_width_mm(truth, year, truth.boundaries[inner].year);
        const Ring* ring = ring_of(dated, by_order, a.found, year);
        if (width && no_break_between(truth, outer, inner) && ring != nullptr && ring->width &&
            ring->sd > Millimetres(0.0)) {
            errors.push_back((ring->width->value() - *width) / ring->sd.value());
        }
    }
    return errors;
}

} // namespace pithward::accuracy
