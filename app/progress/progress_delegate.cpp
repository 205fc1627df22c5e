#include "app/progress/progress_delegate.h"

#include "app/picture/dating/ink.h"
#include "app/progress/progress_model.h"
#include "app/progress/stage_form.h"
#include "app/site/year_band.h"

#include <QApplication>
#include <QPainter>
#include <utility>

namespace pithward::bench {

namespace {

constexpr int gap_beside = 6;
constexpr int form_side = 14;

} // namespace

ProgressDelegate::ProgressDelegate(Pictures pictures, QObject* parent)
    : QStyledItemDelegate(parent)
    , pictures_(std::move(pictures)) {}

void ProgressDelegate::paint_wood(QPainter* painter, const QStyleOptionViewItem& option,
                                  const QModelIndex& index) const {
    const QRect room = option.rect.adjusted(gap_beside, 3, -gap_beside, -3);
    const double ratio = painter->device()->devicePixelRatioF();
    QImage picture = pictures_(index, room.size() * ratio);
    if (picture.isNull()) {
        return;
    }
    const QSizeF size = QSizeF(picture.size()) / ratio;
    painter->drawImage(QRectF(QPointF(room.left(), room.center().y() + 0.5 - 0.5 * size.height()), size), picture);
}

void ProgressDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const QVariant form = index.data(ProgressModel::FormRole);
    if (index.column() == ProgressModel::Wood) {
        QStyledItemDelegate::paint(painter, option, index);
        paint_wood(painter, option, index);
        return;
    }
    if (!form.isValid()) {
        QStyledItemDelegate::paint(painter, option, index);
        return;
    }
    QStyleOptionViewItem back = option;
    initStyleOption(&back, index);
    const QString words = std::exchange(back.text, QString());
    const QStyle* style = option.widget != nullptr ? option.widget->style() : QApplication::style();
    style->drawControl(QStyle::CE_ItemViewItem, &back, painter, back.widget);
    const bool chosen = (option.state & QStyle::State_Selected) != 0;
    const QColor ink = option.palette.color(chosen ? QPalette::HighlightedText : QPalette::Text);
    const QColor warning = chosen ? ink : chart_inks(option.palette).warning;
    const QRectF box(option.rect.left() + gap_beside, option.rect.center().y() + 0.5 - 0.5 * form_side, form_side,
                     form_side);
    paint_form(*painter, static_cast<progress::HowFar>(form.toInt()), box, ink, warning);
    painter->save();
    painter->setPen(ink);
    painter->setFont(option.font);
    const QRect room = option.rect.adjusted(2 * gap_beside + form_side, 0, -gap_beside, 0);
    painter->drawText(room, Qt::AlignVCenter | Qt::AlignLeft,
                      option.fontMetrics.elidedText(words, Qt::ElideRight, room.width()));
    painter->restore();
}

} // namespace pithward::bench
