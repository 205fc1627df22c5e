#pragma once

#include <QFont>
#include <QPainter>
#include <QRectF>
#include <string>

namespace pithward::report {

/// How large the letters of a text in a box may be, in points.
struct LetterSizes {
    double most = 9.0;
    double least = 5.0;
    bool bold = false;
};

/// A text of one line as it goes into its box.
struct FittedText {
    QString text;
    QFont font;
};

/// The rule for a text that is too long for its box: its letters are made smaller, by half a point at a time down to
/// the least; where that does not do, its middle is left out and an ellipsis stands there, since the ends of
/// identifiers tell most. `breadth` in page units (page_text.h).
[[nodiscard]] FittedText fitted(const std::string& text, double breadth, const LetterSizes& sizes);

/// Paints a text so fitted, upright in the middle of the box. `align`: left, right or centre of the box, whatever way
/// the text is read.
void paint_fitted(QPainter& painter, const QRectF& box, const std::string& text, const LetterSizes& sizes,
                  const QColor& ink, Qt::Alignment align = Qt::AlignLeft);

} // namespace pithward::report
