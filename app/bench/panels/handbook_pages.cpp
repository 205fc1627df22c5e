#include "app/bench/panels/handbook_pages.h"

#include <QImage>
#include <QScrollBar>
#include <algorithm>
#include <cstdlib>

namespace pithward::bench {

namespace {

constexpr int least_room = 200;
constexpr int beside = 24;

} // namespace

int HandbookPages::room() const {
    return std::max(least_room, viewport()->width() - beside);
}

QVariant HandbookPages::loadResource(int type, const QUrl& name) {
    if (type != QTextDocument::ImageResource) {
        return QTextBrowser::loadResource(type, name);
    }
    QImage picture(":" + source().resolved(name).path());
    const int finest = static_cast<int>(room() * devicePixelRatioF());
    if (picture.width() > finest) {
        picture = picture.scaledToWidth(finest, Qt::SmoothTransformation);
    }
    if (picture.width() > room()) {
        picture.setDevicePixelRatio(static_cast<double>(picture.width()) / room());
    }
    room_ = room();
    return picture;
}

void HandbookPages::resizeEvent(QResizeEvent* event) {
    constexpr int worth_it = 40;
    QTextBrowser::resizeEvent(event);
    if (room_ > 0 && std::abs(room() - room_) >= worth_it && source().isValid()) {
        const int place = verticalScrollBar()->value();
        room_ = room();
        reload(); // its pictures are of another size now
        verticalScrollBar()->setValue(place);
    }
}

} // namespace pithward::bench
