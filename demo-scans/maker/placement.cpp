#include "demo-scans/maker/placement.h"

#include <algorithm>
#include <cmath>

namespace pithward::demo {

namespace {

constexpr double room_in_groove_mm = 0.5; ///< A piece can't turn further out of the mount's groove.

} // namespace

Frame::Frame(const Scene& scene, double length_mm, ImagePoint middle)
    : middle_(middle)
    , px_per_mm_(scene.dpi / 25.4)
    , half_length_(0.5 * length_mm)
    , cosine_(std::cos(radians(scene.tilt_deg)))
    , sine_(std::sin(radians(scene.tilt_deg)))
    , mirror_(scene.bark_left ? 1.0 : -1.0) {
    if (std::abs(scene.bow_mm) > 1e-6) {
        bend_ = length_mm * length_mm / (8.0 * scene.bow_mm);
    }
}

Frame::OnStrip Frame::to_strip(ImagePoint p) const {
    const double dx = (p.x - middle_.x) / px_per_mm_;
    const double dy = (p.y - middle_.y) / px_per_mm_;
    const double along = (cosine_ * dx + sine_ * dy) * mirror_;
    const double across = -sine_ * dx + cosine_ * dy;
    const Vector u{cosine_ * mirror_, sine_ * mirror_};
    const Vector v{-sine_, cosine_};
    if (bend_ == 0.0) {
        return {along + half_length_, across, u, v};
    }
    const double sign = std::copysign(1.0, bend_);
    const double size = std::abs(bend_);
    const double angle = std::atan2(along, size + sign * across);
    const double c = std::cos(angle);
    const double n = sign * std::sin(angle);
    return {size * angle + half_length_, sign * (std::hypot(along, size + sign * across) - size), u * c - v * n,
            u * n + v * c};
}

ImagePoint Frame::to_image(double s, double b) const {
    double along = s - half_length_;
    double across = b;
    if (bend_ != 0.0) {
        const double sign = std::copysign(1.0, bend_);
        const double size = std::abs(bend_);
        const double angle = along / size;
        along = (size + sign * b) * std::sin(angle);
        across = sign * ((size + sign * b) * std::cos(angle) - size);
    }
    along *= mirror_;
    return {middle_.x + (cosine_ * along - sine_ * across) * px_per_mm_,
            middle_.y + (sine_ * along + cosine_ * across) * px_per_mm_};
}

double middle_of_ring(int year, const std::vector<PlannedRing>& plan, const RingField& field) {
    for (std::size_t k = 0; k < plan.size(); ++k) {
        if (plan[k].year == year) {
            const auto outer = field.crossing_x(static_cast<int>(k) + 1, field.centre_y());
            const auto inner = field.crossing_x(static_cast<int>(k), field.centre_y());
            return field.outer_x() - 0.5 * (outer.value_or(0.0) + inner.value_or(0.0));
        }
    }
    return 0.0;
}

std::vector<Piece> cut(const Scene& scene, const std::vector<PlannedRing>& plan, const RingField& field, double a_end) {
    struct Cut {
        double outer;
        double inner;
        double gap;
        double lateral;
        double turn;
        bool crack;
    };
    std::vector<Cut> cuts;
    for (const TransverseCrack& crack : scene.disturbances.cracks) {
        const double a = middle_of_ring(crack.year, plan, field);
        cuts.push_back({a, a, crack.gap_mm, crack.lateral_mm, radians(crack.tilt_deg), true});
    }
    for (const LostWood& lost : scene.disturbances.lost) {
        const double outer = middle_of_ring(std::max(lost.years.from, lost.years.to), plan, field);
        const double inner = middle_of_ring(std::min(lost.years.from, lost.years.to), plan, field);
        cuts.push_back({outer, inner, lost.gap_mm, 0.0, 0.0, false});
    }
    std::sort(cuts.begin(), cuts.end(), [](const Cut& p, const Cut& q) { return p.outer < q.outer; });
    std::vector<Piece> pieces{Piece{.a_from = -1e6, .a_to = a_end}};
    for (const Cut& c : cuts) {
        Piece& last = pieces.back();
        if (c.outer <= std::max(last.a_from, 0.0) + 1.0 || c.inner >= a_end - 1.0) {
            continue;
        }
        last.a_to = c.outer;
        pieces.push_back({.a_from = c.inner,
                          .a_to = a_end,
                          .shift = last.shift + c.gap - (c.inner - c.outer),
                          .lateral = last.lateral + c.lateral,
                          .turn = c.turn,
                          .crack_before = c.crack});
    }
    for (Piece& piece : pieces) {
        const double most = room_in_groove_mm / (piece.a_to - std::max(piece.a_from, 0.0));
        piece.turn = std::clamp(piece.turn, -most, most);
    }
    return pieces;
}

CorePoint in_piece(const Piece& piece, double s, double b) {
    const double pivot = std::max(piece.a_from, 0.0);
    const double da = s - piece.shift - pivot;
    const double db = b - piece.lateral;
    const double c = std::cos(piece.turn);
    const double n = std::sin(piece.turn);
    return {pivot + c * da + n * db, c * db - n * da};
}

CorePoint on_strip(const Piece& piece, CorePoint wood) {
    const double pivot = std::max(piece.a_from, 0.0);
    const double da = wood.a - pivot;
    const double c = std::cos(piece.turn);
    const double n = std::sin(piece.turn);
    return {pivot + c * da - n * wood.b + piece.shift, n * da + c * wood.b + piece.lateral};
}

} // namespace pithward::demo
