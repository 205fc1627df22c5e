#include "app/report/overlay.h"

#include "app/picture/marks_layer.h"

#include <QBuffer>
#include <QPainter>
#include <algorithm>

namespace pithward::report {

QImage render_overlay(const ScanImage& scan, std::span<const Reading> readings, std::span<const RingSeries> series,
                      int greatest_side) {
    const QSize full = scan.full_size;
    const int longer = std::max({1, full.width(), full.height()});
    const double scale = std::min(1.0, static_cast<double>(greatest_side) / longer);
    QImage image(std::max(1, qRound(full.width() * scale)), std::max(1, qRound(full.height() * scale)),
                 QImage::Format_RGB32);
    if (image.isNull()) {
        return image;
    }
    QPainter painter(&image);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawImage(image.rect(), scan.picture);

    const picture::ViewTransform view(image.size(), {0.5 * (full.width() - 1), 0.5 * (full.height() - 1)}, scale);
    picture::MarksStyle style;
    style.weight = std::clamp(std::min(image.width(), image.height()) / 500.0, 1.0, 4.0);
    style.font.setPixelSize(qRound(14.0 * style.weight));
    for (std::size_t i = 0; i < readings.size() && i < series.size(); ++i) {
        const picture::MeasuredCore core = picture::put_together(readings[i], series[i]);
        picture::paint_marks(painter, picture::visible_marks(core, scan.name, view, QRectF(image.rect())), style, true);
    }
    return image;
}

Outcome<std::string> png_bytes(const QImage& picture) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    if (picture.isNull() || !picture.save(&buffer, "PNG")) {
        return fail("", "the picture is too large for the memory", "export a smaller one");
    }
    return bytes.toStdString();
}

} // namespace pithward::report
