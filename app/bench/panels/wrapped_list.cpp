#include "app/bench/panels/wrapped_list.h"

#include "app/bench/panels/finding_delegate.h"

namespace pithward::bench {

WrappedList::WrappedList(QWidget* parent)
    : QListWidget(parent) {
    setFrameShape(QFrame::NoFrame);
    setMinimumWidth(230);
    setItemDelegate(new FindingDelegate(this));
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
}

void WrappedList::resizeEvent(QResizeEvent* event) {
    QListWidget::resizeEvent(event);
    scheduleDelayedItemsLayout();
}

} // namespace pithward::bench
