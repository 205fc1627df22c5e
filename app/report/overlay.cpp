#include "app/report/overlay.h"

#include "app/bench/marks_layer.h"

#include <QBuffer>
#include <QPainter>
#include <algorithm>

namespace pithward::report {

QImage render_overlay(const ScanImage& scan, std::span<const Reading> readings, std::span<const RingSeries> series,
                      int greatest_side) {
    const QSize full = scan.full_size;
    const int longer = std::max({1, full.width(), full.height()});
    const double scale = std::min(1.0, static_cast<double>(greatest_side) / longer);
    QImage picture(std::max(1, qRound(full.width() * scale)), std::max(1, qRound(full.height() * scale)),
                   QImage::Format_RGB32);
    if (picture.isNull()) {
        return picture;
    }
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawImage(picture.rect(), scan.picture);

    const bench::ViewTransform view(picture.size(), {0.5 * (full.width() - 1), 0.5 * (full.height() - 1)}, scale);
    bench::MarksStyle style;
    style.weight = std::clamp(std::min(picture.width(), picture.height()) / 500.0, 1.0, 4.0);
    style.font.setPixelSize(qRound(14.0 * style.weight));
    for (std::size_t i = 0; i < readings.size() && i < series.size(); ++i) {
        const bench::MeasuredCore core = bench::put_together(readings[i], series[i]);
        bench::paint_marks(painter, bench::visible_marks(core, scan.name, view, QRectF(picture.rect())), style, true);
    }
    return picture;
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
