#include "app/bench/look/icons.h"

#include <QFile>
#include <QIconEngine>
#include <QPainter>
#include <QPixmap>
#include <QSvgRenderer>
#include <utility>

namespace pithward::bench {

namespace {

/// Draws at the size that is asked for, so that it is sharp on every screen.
class DrawnIcon : public QIconEngine {
public:
    DrawnIcon(QByteArray drawing, QColor ink)
        : drawing_(std::move(drawing))
        , ink_(ink) {}

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
        QColor ink = ink_;
        if (mode == QIcon::Disabled) {
            ink.setAlphaF(0.35F * ink.alphaF());
        }
        QByteArray svg = drawing_;
        svg.replace("currentColor", ink.name().toLatin1());
        QSvgRenderer renderer(svg);
        painter->save();
        painter->setOpacity(painter->opacity() * double(ink.alphaF()));
        renderer.render(painter, rect);
        painter->restore();
    }
    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
        QPixmap pixmap(size);
        pixmap.fill(Qt::transparent);
        QPainter painter(&pixmap);
        paint(&painter, QRect(QPoint(), size), mode, state);
        return pixmap;
    }
    [[nodiscard]] QIconEngine* clone() const override { return new DrawnIcon(*this); }

private:
    QByteArray drawing_;
    QColor ink_;
};

} // namespace

QIcon drawn_icon(const QString& name, const QColor& ink) {
    if (name.isEmpty()) {
        return {};
    }
    QFile file(":/icons/" + name + ".svg");
    return file.open(QIODevice::ReadOnly) ? QIcon(new DrawnIcon(file.readAll(), ink)) : QIcon();
}

} // namespace pithward::bench
