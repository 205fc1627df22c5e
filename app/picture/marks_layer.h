#pragma once

#include "app/picture/marks.h"

#include <QColor>
#include <QFont>

class QPainter;

namespace pithward::picture {

/// How marks look. Every mark has a light casing under a dark line, so that it stands out on pale and dark wood alike;
/// what it means is told by its form, never by its colour alone.
struct MarksStyle {
    QColor line{12, 66, 128}; ///< Boundaries and the path.
    QColor casing{255, 255, 255, 190};
    QColor quiet{60, 60, 64};  ///< Candidates turned down.
    QColor notice{150, 60, 0}; ///< Findings.
    QColor lettering{20, 24, 30};
    double weight = 1.0; ///< 1 on a screen; more on a large picture.
    QFont font;
};

/// Words that stand on the scan, given by the caller so that they can be translated.
struct MarkWords {
    QString bark;
    QString bark_unsure;
    QString inner;
    QString goes_on; ///< Where the path goes on on another scan.
};
[[nodiscard]] MarkWords mark_words();

/// Paints marks. A core that is not the present one shows its path and ends only.
void paint_marks(QPainter& painter, const MarkSet& marks, const MarksStyle& style, bool present);

/// Paints a ring picked out, with a word beside it.
void paint_ring(QPainter& painter, const RingMark& ring, const QString& word, const MarksStyle& style);

/// Paints the boundary that is in hand: its line stouter, and brackets that hold it where it crosses the path, off the
/// wood that people look at.
void paint_boundary_in_hand(QPainter& painter, const BoundaryMark& mark, QPointF at, const MarksStyle& style);

/// Paints a finding picked out.
void paint_finding(QPainter& painter, const FindingMark& finding, const MarksStyle& style);

/// Paints a path that is being drawn, in the order of the clicks, with the word for its first end.
void paint_drawn_path(QPainter& painter, const std::vector<ImagePoint>& points, const QString& first_word,
                      const ViewTransform& view, const MarksStyle& style);

/// Letters with a pale rim, readable on any ground. `at` is their middle; where `away` lies level they begin there and
/// go on that way, so that they keep off what is on the other side.
void paint_word(QPainter& painter, QPointF at, QPointF away, const QString& word, const QColor& ink,
                const MarksStyle& style, bool bold = false);

} // namespace pithward::picture
