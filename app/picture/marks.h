#pragma once

#include "app/picture/measured_core.h"
#include "app/picture/view_transform.h"

#include <QLineF>
#include <QPolygonF>
#include <QString>
#include <optional>
#include <vector>

namespace pithward::picture {

/// How sure a boundary is, told by the form of its line.
enum class LineForm {
    Whole,  ///< Sure, or confirmed by a person.
    Dashed, ///< Likely.
    Sparse, ///< Doubtful: short dashes with wide gaps.
};

[[nodiscard]] LineForm form_of(double confidence, Confirmation confirmation);

/// Confidence from which a boundary's line is whole, and from which it is dashed.
inline constexpr double sure_from = 0.95;
inline constexpr double likely_from = 0.80;

/// Everything below is in view coordinates.

/// A year or a ring number beside the wood, and the thin line that leads to it.
struct Lettering {
    QString text;
    QPointF at;   ///< Middle of the text, or of its near side where `away` lies level.
    QPointF away; ///< Unit vector off the wood.
    QLineF leader;
    bool decade = false;
};

/// A boundary: its line on either side of the path; the wood at the path stays bare.
struct BoundaryMark {
    BoundaryId id;
    QPolygonF upper;
    QPolygonF lower;
    LineForm form = LineForm::Whole;
    bool confirmed = false;
    std::optional<Lettering> lettering;
};

/// A candidate turned down: only the tips of its line, each struck through.
struct TurnedDownMark {
    QPolygonF tips[2];
    QLineF strikes[2];
};

/// The end of a path: a line across it, where the wood ends, and a word beyond it.
struct EndMark {
    QLineF across;
    QPointF outward; ///< Unit vector along the path, away from it.
    QPointF word_at;
    bool sure = true;
};

/// A stretch beside the wood that somebody should look at.
struct FindingMark {
    QPolygonF line;
    QPointF number_at;
    QPointF away;
    int number = 0;  ///< As in the list of findings, from 1.
    QString numbers; ///< What is lettered: neighbours that are too close share one lettering, the others have none.
};

/// A stretch without wood: its two edges.
struct BreakMark {
    QLineF edges[2];
    Break::Kind kind = Break::Kind::Crack;
};

/// A locally absent ring: a short double bar beside the wood where it lies, with its year and its width of 0.
struct AbsentMark {
    QLineF bars[2];
    QString text;
    QPointF text_at;
    QPointF away;
};

/// The pith, when it lies near enough to be seen.
struct PithMark {
    QPointF at;
    bool inside = false;
};

/// What one core shows in a view.
struct MarkSet {
    std::vector<QPolygonF> path; ///< Pieces, with the boundaries left bare.
    std::vector<BoundaryMark> boundaries;
    std::vector<TurnedDownMark> turned_down;
    std::vector<FindingMark> findings;
    std::vector<BreakMark> breaks;
    std::vector<AbsentMark> absent;
    std::optional<EndMark> bark;
    std::optional<EndMark> inner;
    std::optional<PithMark> pith;
};

/// The marks of a core on one scan that touch the exposed part of the view. Pure.
[[nodiscard]] MarkSet visible_marks(const MeasuredCore& core, const std::string& scan, const ViewTransform& view,
                                    const QRectF& exposed);

/// One ring picked out: the lines of its two boundaries and a bracket beside the wood.
struct RingMark {
    std::vector<BoundaryMark> edges;
    QPolygonF bracket;
    QPointF word_at;
    QPointF away;
};

/// Nothing when the ring has no place of its own on this scan.
[[nodiscard]] std::optional<RingMark> ring_mark(const MeasuredCore& core, const std::string& scan,
                                                const ViewTransform& view, int ring_number);

} // namespace pithward::picture
