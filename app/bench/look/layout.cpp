#include "app/bench/look/layout.h"

#include <QLabel>
#include <QScrollArea>
#include <QSplitter>
#include <QVBoxLayout>

namespace pithward::bench {

void make_heading(QLabel& label) {
    QFont font = label.font();
    font.setBold(true);
    label.setFont(font);
    label.setContentsMargins(12, 8, 12, 4);
}

QLabel* heading(const QString& text) {
    auto* label = new QLabel(text);
    make_heading(*label);
    return label;
}

QWidget* scrolled(QWidget* inner) {
    auto* area = new QScrollArea;
    area->setWidget(inner);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setFocusPolicy(Qt::NoFocus);
    return area;
}

QWidget* divided(const QString& name, Qt::Orientation direction,
                 std::initializer_list<std::pair<QWidget*, int>> parts) {
    constexpr int share_size = 100;
    auto* splitter = new QSplitter(direction);
    splitter->setObjectName(name);
    QList<int> sizes;
    for (const auto& [part, share] : parts) {
        splitter->addWidget(part);
        splitter->setStretchFactor(splitter->count() - 1, share);
        sizes << share * share_size;
    }
    splitter->setSizes(sizes);
    splitter->setChildrenCollapsible(false);
    splitter->setHandleWidth(5);
    return splitter;
}

QWidget* column(std::initializer_list<QWidget*> parts, const QMargins& around, int between) {
    auto* box = new QWidget;
    auto* layout = new QVBoxLayout(box);
    layout->setContentsMargins(around);
    layout->setSpacing(between);
    for (QWidget* part : parts) {
        layout->addWidget(part);
    }
    return box;
}

} // namespace pithward::bench
