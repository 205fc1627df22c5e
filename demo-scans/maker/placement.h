#pragma once

#include "demo-scans/maker/rings.h"
#include "demo-scans/maker/scene.h"

#include <vector>

namespace pithward::demo {

/// A place on a core in mm: a from the outermost boundary inward along the centre line, b across.
struct CorePoint {
    double a = 0.0;
    double b = 0.0;
};

/// A direction or a place on the scan, in pixels.
using Vector = ImagePoint;

/// Where a core lies on the scan. The strip of the core runs along an arc (bow) about a tilted line: s in mm from the
/// outer end of the wood, b across it.
class Frame {
public:
    /// `length_mm` of wood, its middle at `middle`.
    Frame(const Scene& scene, double length_mm, ImagePoint middle);

    struct OnStrip {
        double s = 0.0;
        double b = 0.0;
        Vector along;  ///< Unit vector on the scan toward the pith.
        Vector across; ///< Unit vector toward growing b.
    };
    [[nodiscard]] OnStrip to_strip(ImagePoint p) const;
    [[nodiscard]] ImagePoint to_image(double s, double b) const;
    [[nodiscard]] double px_per_mm() const { return px_per_mm_; }

private:
    ImagePoint middle_;
    double px_per_mm_ = 1.0;
    double half_length_ = 0.0;
    double cosine_ = 1.0;
    double sine_ = 0.0;
    double mirror_ = 1.0;
    double bend_ = 0.0; ///< Radius of the arc in mm, 0 for a straight core.
};

/// A piece of a core: the wood from a_from to a_to, moved on the strip.
struct Piece {
    double a_from = 0.0;
    double a_to = 0.0;
    double shift = 0.0;        ///< s minus a.
    double lateral = 0.0;      ///< b on the strip minus b in the wood.
    double turn = 0.0;         ///< Radians about the piece's outer end.
    bool crack_before = false; ///< No wood is lost between the piece before and this one.
};

/// Cuts a core into pieces at its cracks and lost stretches. The last piece ends at `a_end`.
[[nodiscard]] std::vector<Piece> cut(const Scene& scene, const std::vector<PlannedRing>& plan, const RingField& field,
                                     double a_end);

/// Where the middle of a year's ring lies on the centre line, as a; fails to the core's outer end.
[[nodiscard]] double middle_of_ring(int year, const std::vector<PlannedRing>& plan, const RingField& field);

/// The place in the wood of a place on the strip, if it belongs to that piece.
[[nodiscard]] CorePoint in_piece(const Piece& piece, double s, double b);
/// The other way.
[[nodiscard]] CorePoint on_strip(const Piece& piece, CorePoint wood);

} // namespace pithward::demo
