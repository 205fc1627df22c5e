#pragma once

#include "app/picture/marks.h"

namespace pithward::picture {

/// How single marks are shaped. All pure, in view coordinates.

/// A leg of the path as it lies in the view.
struct LegView {
    QPolygonF line;
    double reach = 0.0; ///< From the path to the edge of the wood.
    double up = 0.0;    ///< The same on the upper side, where the path does not run in the middle.
    double down = 0.0;
};

inline constexpr double beside_wood = 6.0;  ///< From the wood to the first mark beside it.
inline constexpr double word_offset = 16.0; ///< From the wood to the middle of a word beside it.

/// `on_leg`: the boundaries of this leg, whose curves tell how far the wood reaches to either side.
[[nodiscard]] LegView leg_view(const Leg& leg, const std::vector<const Boundary*>& on_leg, const ViewTransform& view,
                               double reach);
[[nodiscard]] QPolygonF in_view(const std::vector<ImagePoint>& points, const ViewTransform& view);
[[nodiscard]] BoundaryMark boundary_mark(const Boundary& boundary, const MeasuredCore& core, const ViewTransform& view);
/// Lettering goes on from the upper end of a boundary's line, off the wood.
[[nodiscard]] Lettering lettering_beside(const BoundaryMark& mark, QPointF at, const LegView& leg);
[[nodiscard]] TurnedDownMark turned_down_mark(const Candidate& candidate, const MeasuredCore& core,
                                              const ViewTransform& view);
/// The path with the wood at each crossing left bare where there is room. `crossings`: lengths along the line.
[[nodiscard]] std::vector<QPolygonF> path_pieces(const QPolygonF& line, std::vector<double> crossings,
                                                 const QRectF& exposed);
[[nodiscard]] EndMark end_mark(QPointF at, QPointF outward, double reach);
[[nodiscard]] FindingMark finding_mark(const Finding& finding, int number, const LegView& leg,
                                       const ViewTransform& view);
/// `text`: the year of the absent ring, or nothing.
[[nodiscard]] AbsentMark absent_mark(QPointF at, const QString& text, const LegView& leg);
[[nodiscard]] BreakMark break_mark(const Break& stretch, const LegView& leg, const ViewTransform& view);

} // namespace pithward::picture
