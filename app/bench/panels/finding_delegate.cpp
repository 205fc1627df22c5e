#include "app/bench/panels/finding_delegate.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QPainter>

namespace pithward::bench {

namespace {

constexpr int mark_side = 12;
constexpr int above = 6;
constexpr int between = 2;

QFont title_font(QFont font) {
    font.setBold(true);
    return font;
}

} // namespace

void FindingDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QStyleOptionViewItem back = option;
    initStyleOption(&back, index);
    back.text.clear();
    const QStyle* style = back.widget != nullptr ? back.widget->style() : QApplication::style();
    style->drawControl(QStyle::CE_ItemViewItem, &back, painter, back.widget);

    painter->save();
    const auto role = option.state & QStyle::State_Selected ? QPalette::HighlightedText : QPalette::Text;
    painter->setPen(option.palette.color(role));
    QRect rest = option.rect.adjusted(mark_side, above, -mark_side, -above);
    painter->setFont(title_font(option.font));
    QRect used;
    painter->drawText(rest, Qt::TextWordWrap, index.data().toString(), &used);
    rest.setTop(used.bottom() + between);
    painter->setFont(option.font);
    painter->drawText(rest, Qt::TextWordWrap, index.data(body_role).toString());
    painter->restore();
}

QSize FindingDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
    const int width = (view != nullptr ? view->viewport()->width() : 300) - 2 * mark_side;
    const QRect room(0, 0, std::max(80, width), 10000);
    const QRect title =
        QFontMetrics(title_font(option.font)).boundingRect(room, Qt::TextWordWrap, index.data().toString());
    const QRect body = QFontMetrics(option.font).boundingRect(room, Qt::TextWordWrap, index.data(body_role).toString());
    return {width, title.height() + body.height() + 2 * above + between};
}

} // namespace pithward::bench
