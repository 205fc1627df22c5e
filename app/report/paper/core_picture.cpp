#include "app/report/paper/core_picture.h"

#include "app/picture/marks_layer.h"
#include "app/picture/scan_picture.h"
#include "app/report/offscreen_gui.h"

#include <QBuffer>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace pithward::report {

namespace {

constexpr int core_breadth = 1800; ///< Of the picture, in pixels.
constexpr double core_end = 105.0; ///< Free beyond either end of the path.
constexpr double core_letters = 24.0;
constexpr double row_mm = 130.0; ///< Wood in a row, at most.
constexpr int most_rows = 6;

/// How the leg lies on its scan.
struct LegPlace {
    ImagePoint middle;
    double length = 0.0; ///< From end to end, in pixels.
    double turn_deg = 0.0;
    double aside = 0.0; ///< How far it strays from the straight line between its ends, in pixels.
};

LegPlace place_of(const Leg& leg) {
    const ImagePoint a = leg.points.front();
    const ImagePoint b = leg.points.back();
    const ImagePoint way = b - a;
    LegPlace place{(a + b) * 0.5, std::max(1.0, std::hypot(way.x, way.y)), 0.0, 0.0};
    // Turned by the least angle that lays it level, so that the scan does not stand on its head.
    double angle = degrees(std::atan2(way.y, way.x));
    angle -= angle > 90.0 ? 180.0 : angle <= -90.0 ? -180.0 : 0.0;
    place.turn_deg = -angle;
    for (const ImagePoint& p : leg.points) {
        const ImagePoint off = p - a;
        place.aside = std::max(place.aside, std::abs(off.x * way.y - off.y * way.x) / place.length);
    }
    return place;
}

/// The scan's pixels under a view, painted into it.
Outcome<void> paint_wood(QPainter& painter, const ScanFile& scan, const picture::ViewTransform& view) {
    const QRectF seen = view.visible_region();
    const cv::Rect whole(0, 0, scan.header().width, scan.header().height);
    const cv::Point from(static_cast<int>(std::floor(std::clamp<double>(seen.left(), 0, whole.width))),
                         static_cast<int>(std::floor(std::clamp<double>(seen.top(), 0, whole.height))));
    const cv::Point to(static_cast<int>(std::ceil(std::clamp<double>(seen.right(), 0, whole.width))),
                       static_cast<int>(std::ceil(std::clamp<double>(seen.bottom(), 0, whole.height))));
    const cv::Rect region(from, to);
    const int reduction = std::max(1, static_cast<int>(1.0 / view.scale()));
    if (region.width < reduction || region.height < reduction) {
        return fail(scan.header().file, "the path lies outside the scan", "look at it in the window");
    }
    const auto pixels = scan.read(region, reduction);
    if (!pixels) {
        return tl::unexpected(pixels.error());
    }
    painter.save();
    painter.setTransform(view.painter_transform(), true);
    // A pixel reaches half of its breadth to either side of its centre.
    painter.drawImage(QRectF(region.x - 0.5, region.y - 0.5, static_cast<double>(pixels->cols) * reduction,
                             static_cast<double>(pixels->rows) * reduction),
                      picture::picture_of(*pixels));
    painter.restore();
    return {};
}

int rows_for(const Reading& reading, const Leg& leg, double length_px) {
    const auto scale = reading.calibrations.find(leg.scan);
    if (scale == reading.calibrations.end() || scale->second.px_per_mm() <= 0.0) {
        return 1;
    }
    return std::clamp(static_cast<int>(std::ceil(length_px / scale->second.px_per_mm() / row_mm)), 1, most_rows);
}

Outcome<std::string> jpeg_bytes(const QImage& image) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    if (image.isNull() || !image.save(&buffer, "JPEG", 88)) {
        return fail("", "a picture is too large for the memory", "close other programs");
    }
    return bytes.toStdString();
}

} // namespace

Outcome<std::string> core_picture(const ScanFile& scan, const Reading& reading, const RingSeries& series,
                                  std::size_t leg) {
    const OffscreenGui gui;
    if (leg >= reading.path.legs.size() || reading.path.legs[leg].points.size() < 2) {
        return fail(scan.header().file, "there is no path on it", "draw one in the window");
    }
    const Leg& line = reading.path.legs[leg];
    const LegPlace place = place_of(line);
    const int rows = rows_for(reading, line, place.length);
    const picture::MeasuredCore core = picture::put_together(reading, series);
    const double scale = (core_breadth - 2.0 * core_end) / (place.length / rows);
    const double half = (core.half_breadth_px + place.aside) * scale + 3.2 * core_letters;
    const int row_height = static_cast<int>(std::clamp(2.0 * half, 120.0, 900.0));
    QImage image(core_breadth, rows * row_height, QImage::Format_RGB32);
    image.fill(Qt::white);
    picture::MarksStyle style;
    style.weight = 1.7;
    style.font.setPixelSize(qRound(core_letters));
    const double turn = radians(-place.turn_deg);
    const ImagePoint along{std::cos(turn), std::sin(turn)};
    for (int row = 0; row < rows; ++row) {
        const double from_middle = (row + 0.5 - 0.5 * rows) * place.length / rows;
        const picture::ViewTransform view(QSizeF(core_breadth, row_height), place.middle + along * from_middle, scale,
                                          place.turn_deg);
        QPainter painter(&image);
        painter.setRenderHints(QPainter::SmoothPixmapTransform | QPainter::Antialiasing);
        painter.translate(0.0, row * row_height);
        const QRectF box(0.0, 0.0, core_breadth, row_height);
        painter.setClipRect(box);
        if (auto painted = paint_wood(painter, scan, view); !painted) {
            return tl::unexpected(std::move(painted.error()));
        }
        picture::paint_marks(painter, picture::visible_marks(core, line.scan, view, box), style, true);
    }
    return jpeg_bytes(image);
}

} // namespace pithward::report
