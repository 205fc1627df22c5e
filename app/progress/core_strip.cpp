#include "app/progress/core_strip.h"

#include "app/picture/measured_core.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

namespace pithward::bench {

namespace {

constexpr double beside_the_wood = 1.25; ///< Of its half breadth.
constexpr int most_finer = 16;

} // namespace

QImage core_strip(const QImage& whole, int reduction, const Reading& reading, QSize size) {
    if (reading.path.legs.empty() || reading.path.legs.front().points.size() < 2) {
        return {};
    }
    const auto& points = reading.path.legs.front().points;
    const ImagePoint way = points.back() - points.front();
    const double length = std::hypot(way.x, way.y);
    if (!(length >= 1.0)) {
        return {};
    }
    const double scale = size.width() / length;
    const double half = picture::half_breadth_px(reading) * beside_the_wood * scale;
    const int height = half > 0.0 ? std::clamp(static_cast<int>(2.0 * half), 4, size.height()) : size.height();
    // Painted as fine as the scan was read, then averaged: rings that are narrower than a pixel must not flicker.
    const int finer = std::clamp(static_cast<int>(length / reduction / size.width()), 1, most_finer);
    QImage strip(size.width() * finer, height * finer, QImage::Format_ARGB32_Premultiplied);
    if (strip.isNull()) {
        return {};
    }
    strip.fill(Qt::transparent);
    QPainter painter(&strip);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.translate(0.0, 0.5 * height * finer);
    painter.scale(scale * finer, scale * finer);
    painter.rotate(-degrees(std::atan2(way.y, way.x)));
    painter.translate(-points.front().x, -points.front().y);
    // A pixel reaches half of its breadth to either side of its centre.
    painter.drawImage(QRectF(-0.5, -0.5, static_cast<double>(whole.width()) * reduction,
                             static_cast<double>(whole.height()) * reduction),
                      whole);
    painter.end();
    return finer > 1 ? strip.scaled(size.width(), height, Qt::IgnoreAspectRatio, Qt::SmoothTransformation) : strip;
}

QImage whole_strip(const QImage& whole, QSize size) {
    const bool stands = whole.height() > whole.width();
    const QImage level = stands ? whole.transformed(QTransform().rotate(90.0)) : whole;
    return level.scaled(size, Qt::KeepAspectRatio, Qt::SmoothTransformation);
}

} // namespace pithward::bench
