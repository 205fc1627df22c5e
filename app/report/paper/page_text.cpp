#include "app/report/paper/page_text.h"

#include <QTextLayout>

namespace pithward::report {

namespace {

constexpr double leading = 1.16; ///< From line to line, against the height of the letters.

} // namespace

QFont page_font(double points, bool bold) {
    QFont font(QStringLiteral("Sans Serif"));
    font.setPixelSize(qRound(points * page_unit));
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setBold(bold);
    return font;
}

PageText::PageText(const QString& text, const QFont& font, double breadth, Qt::Alignment align, int bold_letters)
    : layout_(std::make_shared<QTextLayout>(text, font)) {
    QTextOption option(align);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout_->setTextOption(option);
    if (bold_letters > 0) {
        QTextLayout::FormatRange head;
        head.start = 0;
        head.length = bold_letters;
        head.format.setFontWeight(QFont::Bold);
        layout_->setFormats({head});
    }
    layout_->beginLayout();
    double y = 0.0;
    for (QTextLine line = layout_->createLine(); line.isValid(); line = layout_->createLine()) {
        line.setLineWidth(breadth);
        line.setPosition({0.0, y});
        y += line.height() * leading;
    }
    layout_->endLayout();
}

double PageText::height() const {
    double all = 0.0;
    for (int i = 0; i < lines(); ++i) {
        all += line_height(i);
    }
    return all;
}

int PageText::lines() const {
    return layout_->lineCount();
}

double PageText::line_height(int line) const {
    return layout_->lineAt(line).height() * leading;
}

void PageText::paint(QPainter& painter, QPointF at, const QColor& ink) const {
    painter.setPen(ink);
    layout_->draw(&painter, at);
}

void PageText::paint_line(QPainter& painter, QPointF at, int line, const QColor& ink) const {
    painter.setPen(ink);
    const QTextLine one = layout_->lineAt(line);
    one.draw(&painter, at - QPointF(0.0, one.y()));
}

} // namespace pithward::report
