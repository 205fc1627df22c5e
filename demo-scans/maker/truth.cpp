#include "demo-scans/maker/core_model.h"
#include "demo-scans/maker/truth_of.h"

#include <algorithm>
#include <cmath>

namespace pithward::demo {

namespace {

constexpr double outside_mm = 0.6; // the path starts this far outside the outermost boundary
constexpr double too_thin_px = 1.2;
constexpr double step_px = 0.5;
constexpr double corner_mm = 4.0;       // a corner of the path at least so often where the core is bowed,
constexpr double off_centre_mm = 0.004; // and so often that the path strays no further from the arc

/// A polyline walked by its length.
class Walk {
public:
    explicit Walk(std::vector<ImagePoint> points)
        : points_(std::move(points)) {
        for (std::size_t i = 0; i + 1 < points_.size(); ++i) {
            const ImagePoint d = points_[i + 1] - points_[i];
            start_.push_back(start_.back() + std::hypot(d.x, d.y));
        }
    }
    [[nodiscard]] double length() const { return start_.back(); }
    [[nodiscard]] ImagePoint at(double s) const {
        std::size_t i = 0;
        while (i + 2 < points_.size() && start_[i + 1] < s) {
            ++i;
        }
        return points_[i] + (points_[i + 1] - points_[i]) * ((s - start_[i]) / (start_[i + 1] - start_[i]));
    }

private:
    std::vector<ImagePoint> points_;
    std::vector<double> start_{0.0};
};

std::vector<ImagePoint> path_of(const CoreModel& core) {
    const bool to_pith = core.rings_to_pith == 0;
    const double from = core.scene.lost_outer_mm > 0.0 ? core.scene.lost_outer_mm - 0.3 : -outside_mm;
    const double to = (to_pith ? core.a_innermost : 0.5 * (core.a_innermost + core.a_end)) + core.pieces.back().shift;
    const double bend_at = to_pith ? std::max(from + 0.5, to - 3.0) : to; // the last stretch turns to the pith itself
    std::vector<ImagePoint> path;
    int parts = 1;
    if (std::abs(core.scene.bow_mm) > 1e-6) {
        const double bend = core.strip_mm * core.strip_mm / (8.0 * std::abs(core.scene.bow_mm));
        parts =
            static_cast<int>(std::ceil((bend_at - from) / std::min(corner_mm, std::sqrt(8.0 * bend * off_centre_mm))));
    }
    for (int i = 0; i <= parts; ++i) {
        path.push_back(core.frame.to_image(from + (bend_at - from) * i / parts, 0.0));
    }
    if (to_pith) {
        path.push_back(core.to_image(core.pieces.back(), {core.field.outer_x(), -core.field.centre_y()}));
    }
    return path;
}

struct Crossing {
    int k = 0;
    double s = 0.0;    ///< Along the path, px.
    double gaps = 0.0; ///< Length of the gaps before it, px.
    bool in_gap = false;
    TreePoint tree;
    std::size_t piece = 0;
};

/// The path of the far side, from its outer end to the pith.
std::vector<ImagePoint> far_path_of(const CoreModel& core) {
    const double wood_end =
        core.field.outer_x() -
        core.field.crossing_x(core.field.count(), core.field.centre_y(), RingField::Side::Far).value_or(0.0);
    const double from = std::min(core.a_end, wood_end + outside_mm);
    const double to = std::min(from - 0.5, core.a_innermost + 3.0);
    const Piece& piece = core.pieces.back();
    const int parts = static_cast<int>(std::ceil(std::max(1.0, (from - to) / corner_mm)));
    std::vector<ImagePoint> path;
    for (int i = 0; i <= parts; ++i) {
        path.push_back(core.to_image(piece, {from + (to - from) * i / parts, 0.0}));
    }
    path.push_back(core.to_image(piece, {core.field.outer_x(), -core.field.centre_y()}));
    return path;
}

/// Walks the path and notes where it goes from outside each boundary to inside. `cut` tells that the path may start
/// inside some, whose wood is not on the core.
std::vector<Crossing> crossings(const CoreModel& core, const Walk& walk, bool cut,
                                std::vector<std::pair<double, double>>& gap_list) {
    std::vector<Crossing> found;
    const auto outside = [&](int k, const CoreModel::InWood& w) { return core.field.outside(k, w.tree); };
    int k = core.field.count();
    double gaps = 0.0;
    bool met_wood = false;
    double last_wood = 0.0;
    CoreModel::InWood last;
    const int least = std::max(core.rings_to_pith, 1);
    for (double s = 0.0; s <= walk.length() && k >= least; s += step_px) {
        const CoreModel::InWood here = core.in_wood(walk.at(s));
        if (here.cover < 0.5) {
            continue;
        }
        if (!met_wood) {
            met_wood = true;
            while (cut && k >= least && outside(k, here) < 0.0) {
                --k; // lost with the outer wood
            }
        } else if (here.piece != last.piece) {
            gaps += s - last_wood;
            gap_list.emplace_back(last_wood, s);
            while (k >= least && outside(k, here) < 0.0) { // ended within the gap
                found.push_back({k--, 0.5 * (s + last_wood), gaps, true, here.tree, here.piece});
            }
        }
        while (k >= least && outside(k, here) < 0.0) {
            double low = std::max(last_wood, s - 2.0 * step_px);
            double high = s;
            for (int round = 0; round < 50; ++round) {
                const double middle = 0.5 * (low + high);
                (outside(k, core.in_wood(walk.at(middle))) < 0.0 ? high : low) = middle;
            }
            const double at = 0.5 * (low + high);
            const CoreModel::InWood wood = core.in_wood(walk.at(at));
            found.push_back({k--, at, gaps, false, wood.tree, wood.piece});
        }
        last_wood = s;
        last = here;
    }
    return found;
}

double tangent_deg(const CoreModel& core, int k, const CoreModel::InWood& at) {
    const double radius = std::hypot(at.tree.x, at.tree.y);
    const double slope = core.field.slope(k, core.field.direction(std::atan2(at.tree.y, at.tree.x))) / radius;
    const double gx = (at.tree.x + slope * at.tree.y) / radius;
    const double gy = (at.tree.y - slope * at.tree.x) / radius;
    const Vector tangent = at.along * gy + at.across * gx; // x of the tree runs against `along`
    return degrees(line_direction(std::atan2(tangent.y, tangent.x)));
}

void add_false_rings(const CoreModel& core, Truth& truth) {
    for (const FalseRing& band : core.scene.disturbances.false_rings) {
        for (std::size_t k = 0; k < core.plan.size(); ++k) {
            const auto outer = core.field.crossing_x(static_cast<int>(k) + 1, core.field.centre_y());
            const auto inner = core.field.crossing_x(static_cast<int>(k), core.field.centre_y());
            if (core.plan[k].year != band.year || !outer || !inner || core.plan[k].width_mm <= 0.0) {
                continue;
            }
            const double a = core.field.outer_x() - (*inner + (*outer - *inner) * band.phase);
            for (const Piece& piece : core.pieces) {
                if (a > piece.a_from && a < piece.a_to) {
                    truth.false_rings.push_back(
                        {core.to_image(piece, {a, 0.0}), Year(band.year), band.phase, band.strength});
                }
            }
        }
    }
}

} // namespace

namespace {

/// What is there along a path. `cut` as for crossings().
Truth truth_along(const CoreModel& core, std::vector<ImagePoint> path, bool cut, int width_px, int height_px) {
    Truth truth;
    truth.name = core.scene.name;
    truth.timber = word(core.scene.timber);
    truth.wood = wood_type(core.scene.timber);
    truth.dpi = core.scene.dpi;
    truth.width_px = width_px;
    truth.height_px = height_px;
    truth.path = std::move(path);
    truth.bark_left = core.scene.bark_left;
    const Walk walk(truth.path);
    const double mm = 25.4 / core.scene.dpi;
    std::vector<std::pair<double, double>> gaps;
    const std::vector<Crossing> found = crossings(core, walk, cut, gaps);
    const int complete = core.field.count() - (core.plan.back().complete ? 0 : 1);
    double last_visible = -1e9;
    const Crossing* before = nullptr;
    const auto add_width = [&](const Crossing& outer, const Crossing& inner) {
        TrueWidth width{Year(core.plan[static_cast<std::size_t>(outer.k - 1)].year), 0.0, 0.0};
        const bool lost = (outer.in_gap || inner.in_gap || outer.piece != inner.piece) &&
                          !core.pieces[std::max(outer.piece, inner.piece)].crack_before;
        if (lost) {
            width.radial_mm = width.along_path_mm = std::nullopt;
        } else if (core.plan[static_cast<std::size_t>(outer.k - 1)].width_mm > 0.0) {
            width.radial_mm = core.field.width_between(outer.k, outer.tree, inner.tree);
            width.along_path_mm = (inner.s - inner.gaps - outer.s + outer.gaps) * mm;
        }
        truth.widths.push_back(width);
    };
    for (const Crossing& c : found) {
        const ImagePoint at = walk.at(c.s);
        if (c.k > complete) {
            truth.bark_edge = at;
            continue;
        }
        TrueBoundary boundary;
        boundary.at = at;
        boundary.year = Year(core.plan[static_cast<std::size_t>(c.k - 1)].year);
        const CoreModel::InWood wood = core.in_wood(at);
        boundary.angle_deg = tangent_deg(core, c.k, wood);
        boundary.at_bark = c.k == core.field.count();
        const bool absent = core.plan[static_cast<std::size_t>(c.k - 1)].width_mm <= 0.0;
        const bool thin = c.s - last_visible < too_thin_px;
        boundary.why_invisible = absent                           ? "absent"
                                 : c.in_gap                       ? "gap"
                                 : core.in_chunk(wood.core) > 0.0 ? "chunk"
                                 : thin                           ? "too_thin"
                                                                  : "";
        boundary.visible = boundary.why_invisible.empty();
        last_visible = boundary.visible ? c.s : last_visible;
        truth.boundaries.push_back(boundary);
        if (before != nullptr) {
            add_width(*before, c);
        }
        before = &c;
    }
    truth.last_complete_ring_year = truth.boundaries.empty() ? core.scene.last_year : truth.boundaries.front().year;
    truth.pith.inside = core.rings_to_pith == 0;
    truth.pith.missing_rings = core.rings_to_pith;
    truth.pith.at = core.to_image(core.pieces.back(), {core.field.outer_x(), -core.field.centre_y()});
    if (truth.pith.inside && before != nullptr) {
        add_width(*before, {.k = 0, .s = walk.length(), .gaps = before->gaps, .tree = {}, .piece = before->piece});
        truth.widths.back().radial_mm = std::hypot(before->tree.x, before->tree.y);
    }
    const ImagePoint off = truth.pith.at - truth.path.back();
    truth.pith.distance_mm = std::hypot(off.x, off.y) * mm;
    for (std::size_t i = 0; i < gaps.size(); ++i) {
        const ImagePoint from = walk.at(gaps[i].first);
        const ImagePoint to = walk.at(gaps[i].second);
        const Piece& after = core.pieces[i + 1];
        truth.disturbances.push_back({after.crack_before ? "transverse_break" : "lost_wood",
                                      (gaps[i].second - gaps[i].first) * mm,
                                      {{"gap_mm", (gaps[i].second - gaps[i].first) * mm},
                                       {"x0", from.x},
                                       {"x1", to.x},
                                       {"y", 0.5 * (from.y + to.y)},
                                       {"lateral_mm", after.lateral},
                                       {"tilt_deg", degrees(after.turn)}}});
    }
    return truth;
}

} // namespace

Truth truth_of(const CoreModel& core, int width_px, int height_px) {
    Truth truth = truth_along(core, path_of(core), core.scene.lost_outer_mm > 0.0, width_px, height_px);
    add_false_rings(core, truth);
    note_disturbances(core, truth);
    return truth;
}

Truth far_truth_of(const CoreModel& core, int width_px, int height_px) {
    Truth truth = truth_along(core, far_path_of(core), true, width_px, height_px);
    truth.name += "-far";
    truth.bark_left = !truth.bark_left;
    return truth;
}

} // namespace pithward::demo
