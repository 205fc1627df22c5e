#include "app/bench/scan_view/coarse_picture.h"

#include "app/bench/model/beside_window.h"

#include <cstring>

namespace pithward::bench {

namespace {

using Part = std::function<void(int first_row, const QImage& rows)>;

/// Hands out the picture in parts, or as one where the scan has no parts to give.
Outcome<void> read_coarse(const OpenedScan& scan, int reduction, const Part& part, const Work& work) {
    if (scan.coarse) {
        return scan.coarse(reduction, part, work);
    }
    const QRect all(0, 0, scan.header.width, scan.header.height);
    return scan.pixels(all, reduction).map([&](const QImage& picture) { part(0, picture); });
}

} // namespace

CoarsePicture::CoarsePicture(QObject* parent)
    : QObject(parent) {
    pool_.setMaxThreadCount(1);
}

CoarsePicture::~CoarsePicture() {
    stop_.request_stop();
    pool_.waitForDone();
}

void CoarsePicture::show(const std::shared_ptr<const OpenedScan>& scan, int reduction) {
    stop_.request_stop();
    stop_ = {};
    picture_ = {};
    complete_ = false;
    const int generation = ++generation_;
    if (!scan) {
        return;
    }
    const QSize size(scan->header.width / reduction, scan->header.height / reduction);
    picture_ = QImage(size, QImage::Format_ARGB32_Premultiplied);
    picture_.fill(Qt::transparent);
    // From whichever thread reads: the part goes to the window's thread, and is dropped when another scan is shown.
    const auto part = [this, generation](int first_row, const QImage& rows) {
        QMetaObject::invokeMethod(
            this, [this, generation, first_row, rows] { take(generation, first_row, rows); }, Qt::QueuedConnection);
    };
    const auto read = [scan, reduction, part, stop = stop_.get_token()] {
        return read_coarse(*scan, reduction, part, Work{stop, {}});
    };
    beside_window(pool_, this, read, [this, generation](const Outcome<void>& done) { end(generation, done); });
}

void CoarsePicture::take(int generation, int first_row, const QImage& rows) {
    if (generation != generation_ || rows.width() != picture_.width()) {
        return;
    }
    const QImage part = rows.convertToFormat(picture_.format());
    for (int y = 0; y < part.height() && first_row + y < picture_.height(); ++y) {
        std::memcpy(picture_.scanLine(first_row + y), part.constScanLine(y),
                    static_cast<std::size_t>(part.width()) * sizeof(QRgb));
    }
    emit grown();
}

void CoarsePicture::end(int generation, const Outcome<void>& done) {
    if (generation != generation_) {
        return;
    }
    if (done) {
        complete_ = true;
        picture_ = std::move(picture_).convertToFormat(QImage::Format_RGB32); // quicker to draw
        emit grown();
    } else {
        emit failed(QString::fromStdString(done.error().line()));
    }
}

} // namespace pithward::bench
