#include "demo-scans/maker/core_model.h"

#include "demo-scans/maker/noise.h"

#include <algorithm>
#include <cmath>

namespace pithward::demo {

namespace {

constexpr double room_for_bark = 1.4;

int count_to_pith(const std::vector<PlannedRing>& plan) {
    return static_cast<int>(std::count_if(plan.begin(), plan.end(), [](const PlannedRing& r) { return !r.on_core; }));
}

/// How far the edge of a break strays from a straight cut.
double ragged(std::uint64_t seed, double b) {
    return 0.09 * noise(seed, b / 0.8) + 0.03 * noise(seed + 1, b / 0.12);
}

} // namespace

CoreModel::CoreModel(const Scene& from)
    : scene(from)
    , plan(plan_rings(from))
    , field(from, plan)
    , rings(profiles(from, plan))
    , rings_to_pith(count_to_pith(plan))
    , frame(from, 1.0, {}) {
    if (scene.texture > 0.0) {
        pores = Pores(grow_pores(scene, plan, field), 0.5 * scene.core_width_mm);
    }
    if (rings_to_pith == 0) {
        a_innermost = field.outer_x();
        const double far_mm = -field.crossing_x(field.count(), field.centre_y(), RingField::Side::Far).value_or(0.0);
        a_end = a_innermost + std::min(scene.past_pith_mm, far_mm + room_for_bark * scene.bark_mm);
    } else {
        a_innermost = field.outer_x() - field.crossing_x(rings_to_pith, field.centre_y()).value_or(0.0);
        const double inner_width = plan[static_cast<std::size_t>(rings_to_pith - 1)].width_mm;
        a_end = a_innermost + std::min(0.6 * inner_width, 0.9) + 0.1;
    }
    pieces = cut(scene, plan, field, a_end);
    strip_mm = a_end + pieces.back().shift;
    place({});
}

void CoreModel::place(ImagePoint middle) {
    frame = Frame(scene, strip_mm, middle);
    const double bark = scene.lost_outer_mm > 0.0 ? -scene.lost_outer_mm : scene.bark_mm;
    const ImagePoint seen = frame.to_image(0.5 * (strip_mm - bark), 0.0);
    frame = Frame(scene, strip_mm, middle + (middle - seen));
}

CoreModel::InWood CoreModel::in_wood(ImagePoint p) const {
    const Frame::OnStrip strip = frame.to_strip(p);
    const double per_px = scene.dpi / 25.4;
    InWood best;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const Piece& piece = pieces[i];
        const CorePoint core = in_piece(piece, strip.s, strip.b);
        const std::uint64_t seed = mix(scene.seed, 60);
        double cover = 1.0;
        if (i > 0) {
            // Both sides of a crack are the same break.
            const double edge = piece.a_from + ragged(seed + 10 * (piece.crack_before ? i : i + 100), core.b);
            cover = std::clamp(0.5 + (core.a - edge) * per_px, 0.0, 1.0);
        } else if (scene.lost_outer_mm > 0.0) {
            cover = std::clamp(0.5 + (core.a - scene.lost_outer_mm - ragged(seed + 5, core.b)) * per_px, 0.0, 1.0);
        }
        const bool last = i + 1 == pieces.size();
        const double end = piece.a_to + (last ? 2.2 * ragged(seed + 7, core.b) : ragged(seed + 10 * (i + 1), core.b));
        cover *= std::clamp(0.5 + (end - core.a) * per_px, 0.0, 1.0);
        if (i == 0 || cover > best.cover) {
            const double c = std::cos(piece.turn);
            const double n = std::sin(piece.turn);
            best.piece = i;
            best.core = core;
            best.cover = cover;
            best.along = strip.along * c + strip.across * n;
            best.across = strip.across * c - strip.along * n;
        }
    }
    best.tree = {field.outer_x() - best.core.a, best.core.b + field.centre_y()};
    return best;
}

ImagePoint CoreModel::to_image(const Piece& piece, CorePoint core) const {
    const CorePoint strip = on_strip(piece, core);
    return frame.to_image(strip.a, strip.b);
}

double CoreModel::in_chunk(CorePoint core) const {
    double inside = -1e9;
    std::uint64_t seed = mix(scene.seed, 61);
    for (const MissingChunk& chunk : scene.disturbances.chunks) {
        ++seed;
        const double half = 0.5 * chunk.length_mm;
        const double depth = chunk.depth * scene.core_width_mm;
        const double from_side = 0.5 * scene.core_width_mm - core.b * chunk.side;
        const double along = (core.a - chunk.at_mm) / half;
        // A bite: deepest in its middle, with splintered edges.
        const double bite =
            depth * (1.0 - along * along) + 0.16 * noise(seed, core.a / 0.5) + 0.06 * noise(seed + 50, core.a / 0.1);
        inside = std::max(inside, std::abs(along) < 1.2 ? bite - from_side : -1e9);
    }
    return inside;
}

} // namespace pithward::demo
