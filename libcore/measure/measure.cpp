#include "libcore/measure/measure.h"

#include "libcore/measure/path_places.h"
#include "libcore/measure/ring_width.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace pithward {

namespace {

/// A boundary with its place. Where two legs join at a boundary it has two marks, one on each leg: `entered` is the
/// second.
struct Node {
    const Boundary* left = nullptr;    ///< The mark toward which the ring outside is measured.
    const Boundary* entered = nullptr; ///< The mark from which the ring inside is measured; mostly the same.
    double s_mm = 0.0;
};

std::vector<Node> nodes_of(const Reading& reading, const PathPlaces& places) {
    std::vector<Node> nodes;
    std::set<BoundaryId> second_marks;
    for (const Leg& leg : reading.path.legs) {
        if (const auto* join = std::get_if<JoinedAtBoundary>(&leg.joined_by)) {
            second_marks.insert(join->on_this);
        }
    }
    for (const Boundary& boundary : reading.boundaries) {
        if (!second_marks.contains(boundary.id)) {
            nodes.push_back({&boundary, &boundary, places.along(boundary.leg, boundary.at)});
        }
    }
    for (const Leg& leg : reading.path.legs) {
        if (const auto* join = std::get_if<JoinedAtBoundary>(&leg.joined_by)) {
            const auto node =
                std::ranges::find_if(nodes, [&](const Node& n) { return n.left->id == join->on_previous; });
            const auto mark = std::ranges::find(reading.boundaries, join->on_this, &Boundary::id);
            node->entered = &*mark;
        }
    }
    std::ranges::stable_sort(nodes, {}, &Node::s_mm);
    return nodes;
}

/// What the breaks do to one ring.
struct BreakEffect {
    double crack_mm = 0.0;
    bool lost_wood = false;
    bool floats = false; ///< Nobody knows how many rings are gone.
    int rings_lost = 0;
};

class Breaks {
public:
    Breaks(const Reading& reading, const PathPlaces& places) {
        for (const Break& stretch : reading.breaks) {
            const double a = places.along(stretch.leg, stretch.from);
            const double b = places.along(stretch.leg, stretch.to);
            stretches_.push_back({std::min(a, b), std::max(a, b), &stretch});
        }
    }

    [[nodiscard]] BreakEffect between(double outer_mm, double inner_mm) const {
        BreakEffect effect;
        for (const Stretch& stretch : stretches_) {
            // A break of no length, between pieces pushed together, touches its ring too.
            if (stretch.from >= inner_mm || stretch.to <= outer_mm) {
                continue;
            }
            if (stretch.what->kind == Break::Kind::Crack) {
                effect.crack_mm += std::min(inner_mm, stretch.to) - std::max(outer_mm, stretch.from);
                continue;
            }
            effect.lost_wood = true;
            effect.floats = effect.floats || !stretch.what->rings_lost;
            effect.rings_lost += stretch.what->rings_lost.value_or(0);
        }
        return effect;
    }

private:
    struct Stretch {
        double from;
        double to;
        const Break* what;
    };
    std::vector<Stretch> stretches_;
};

/// Builds the series from the bark inward.
class Builder {
public:
    Builder(const Reading& reading, const PathPlaces& places)
        : reading_(reading)
        , places_(places)
        , breaks_(reading, places) {}

    [[nodiscard]] RingSeries build() {
        const std::vector<Node> nodes = nodes_of(reading_, places_);
        if (nodes.empty()) {
            return std::move(series_);
        }
        year_ = reading_.last_year;
        if (year_) {
            year_ = *year_ + absent_at(nodes.front());
        }
        add_absent(nodes.front());
        place(nodes.front());
        for (std::size_t k = 0; k + 1 < nodes.size(); ++k) {
            if (!floating_) {
                add_ring(nodes[k], nodes[k + 1]);
                add_absent(nodes[k + 1]);
            }
            place(nodes[k + 1]);
        }
        add_innermost(nodes.back());
        add_outer_partial(nodes.front());
        series_.calibration_relative_sd = common_deviation();
        return std::move(series_);
    }

private:
    [[nodiscard]] int absent_at(const Node& node) const {
        return static_cast<int>(std::ranges::count_if(reading_.absent_rings, [&](const AbsentRing& ring) {
            return ring.at == node.left->id || ring.at == node.entered->id;
        }));
    }

    void push(Ring ring) {
        ring.year = year_;
        ring.number = number_++;
        series_.rings.push_back(ring);
        if (year_) {
            year_ = *year_ - 1;
        }
    }

    void add_absent(const Node& node) {
        for (int n = absent_at(node); n > 0; --n) {
            Ring ring;
            ring.width = Millimetres(0.0);
            ring.along_path = Millimetres(0.0);
            ring.absent = true;
            push(ring);
        }
    }

    [[nodiscard]] RingEdges edges_of(const Boundary& from, const Boundary& to, double along_path_mm) const {
        const Calibration& from_scale = places_.calibration(from.leg);
        const Calibration& to_scale = places_.calibration(to.leg);
        RingEdges edges;
        edges.outer = on_wood(from.at, from_scale);
        edges.inner = on_wood(to.at, to_scale);
        edges.outer_tangent = direction_on_wood(from.tangent, from_scale);
        edges.inner_tangent = direction_on_wood(to.tangent, to_scale);
        if (from.leg != to.leg) {
            // A ring that goes over a break: its edges have only the path in common, so each is turned by its leg.
            edges.outer = {0.0, 0.0};
            edges.inner = {along_path_mm, 0.0};
            edges.outer_tangent -= places_.direction(from.leg, from.at);
            edges.inner_tangent -= places_.direction(to.leg, to.at);
        }
        edges.along_path_mm = along_path_mm;
        edges.outer_sd_mm = from.sd.value();
        edges.inner_sd_mm = to.sd.value();
        return edges;
    }

    void add_ring(const Node& outer, const Node& inner) {
        const BreakEffect effect = breaks_.between(outer.s_mm, inner.s_mm);
        if (effect.floats) {
            // Whole rings may be gone and nobody said how many: the series ends, what is beyond floats.
            floating_ = true;
            return;
        }
        if (effect.lost_wood) {
            for (int n = 0; n <= effect.rings_lost; ++n) {
                push(Ring{});
            }
            return;
        }
        const Boundary& from = *outer.entered;
        const Boundary& to = *inner.left;
        const RingEdges edges = edges_of(from, to, std::max(0.0, inner.s_mm - outer.s_mm - effect.crack_mm));
        const RingWidth width = ring_width(edges);
        Ring ring;
        ring.width = Millimetres(width.width_mm);
        ring.along_path = Millimetres(edges.along_path_mm);
        ring.sd = Millimetres(width.sd_mm);
        if (from.latewood && *from.latewood > Millimetres(0.0) && *from.latewood < *ring.width) {
            ring.latewood = from.latewood;
            ring.earlywood = *ring.width - *from.latewood;
        }
        push(ring);
    }

    /// With the pith on the core the innermost ring runs from its outer edge to the pith, unless rings between were
    /// overlooked.
    void add_innermost(const Node& innermost) {
        if (floating_ || !reading_.pith || !reading_.pith->inside || reading_.pith->missing_rings > 0) {
            return;
        }
        const Boundary& edge = *innermost.entered;
        Ring ring;
        ring.width = places_.calibration(edge.leg).distance(edge.at, reading_.pith->at);
        ring.along_path = ring.width;
        ring.sd = edge.sd;
        push(ring);
    }

    void add_outer_partial(const Node& outermost) {
        if (reading_.outer != OuterWood::Unfinished || !reading_.wood_edge) {
            return;
        }
        const Boundary& edge = *outermost.left;
        const Calibration& scale = places_.calibration(0);
        RingEdges edges;
        edges.outer = on_wood(*reading_.wood_edge, scale);
        edges.inner = on_wood(edge.at, places_.calibration(edge.leg));
        edges.outer_tangent = direction_on_wood(edge.tangent, scale);
        edges.inner_tangent = edges.outer_tangent;
        edges.along_path_mm = outermost.s_mm - places_.along(0, *reading_.wood_edge);
        if (edges.along_path_mm > 0.0) {
            series_.outer_partial = Millimetres(ring_width(edges).width_mm);
        }
    }

    /// The ring that a boundary closes is the next one to be added.
    void place(const Node& node) {
        const std::optional<Year> year = floating_ ? std::nullopt : year_;
        const int number = floating_ ? 0 : number_;
        series_.boundaries.push_back({node.left->id, Millimetres(node.s_mm), year, number});
        if (node.entered != node.left) {
            series_.boundaries.push_back({node.entered->id, Millimetres(node.s_mm), year, number});
        }
    }

    [[nodiscard]] double common_deviation() const {
        double greatest = 0.0;
        for (const auto& [scan, calibration] : reading_.calibrations) {
            greatest = std::max(greatest, calibration.relative_sd);
        }
        return greatest;
    }

    const Reading& reading_;
    const PathPlaces& places_;
    Breaks breaks_;
    RingSeries series_;
    std::optional<Year> year_;
    int number_ = 1;
    bool floating_ = false;
};

} // namespace

Outcome<RingSeries> measure(const Reading& reading) {
    const auto places = PathPlaces::of(reading);
    if (!places) {
        return tl::unexpected(places.error());
    }
    return Builder(reading, *places).build();
}

Outcome<Millimetres> place_on_path(const Reading& reading, std::size_t leg, ImagePoint at) {
    const auto places = PathPlaces::of(reading);
    if (!places) {
        return tl::unexpected(places.error());
    }
    if (leg >= reading.path.legs.size()) {
        return fail("", "a place names a leg that the path does not have", "draw the path again");
    }
    return Millimetres(places->along(leg, at));
}

} // namespace pithward
