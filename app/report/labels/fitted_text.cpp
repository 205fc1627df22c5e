#include "app/report/labels/fitted_text.h"

#include "app/report/paper/document.h"
#include "app/report/paper/page_text.h"

#include <QFontMetricsF>

namespace pithward::report {

FittedText fitted(const std::string& text, double breadth, const LetterSizes& sizes) {
    constexpr std::size_t most_characters = 1000; // More are not looked at.
    constexpr double step = 0.5;
    FittedText result{QString::fromStdString(fit_text(text, most_characters)), page_font(sizes.most, sizes.bold)};
    for (int k = 0; QFontMetricsF(result.font).horizontalAdvance(result.text) > breadth; ++k) {
        const double points = sizes.most - step * k;
        if (points < sizes.least) {
            result.text = QFontMetricsF(result.font).elidedText(result.text, Qt::ElideMiddle, breadth);
            break;
        }
        result.font = page_font(points, sizes.bold);
    }
    return result;
}

void paint_fitted(QPainter& painter, const QRectF& box, const std::string& text, const LetterSizes& sizes,
                  const QColor& ink, Qt::Alignment align) {
    const FittedText fit = fitted(text, box.width(), sizes);
    painter.setFont(fit.font);
    painter.setPen(ink);
    painter.drawText(box, static_cast<int>(align | Qt::AlignVCenter | Qt::AlignAbsolute) | Qt::TextSingleLine,
                     fit.text);
}

} // namespace pithward::report
