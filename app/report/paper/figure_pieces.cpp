#include "app/report/paper/page_pieces.h"
#include "app/report/paper/page_text.h"

#include <QImage>
#include <QSvgRenderer>
#include <algorithm>

namespace pithward::report {

namespace {

/// A picture of a size that can be painted into a box.
struct Painting {
    QSizeF size;
    std::function<void(QPainter&, const QRectF&)> paint;
};

Painting painting_of(const Figure& figure) {
    const QByteArray bytes(figure.bytes.data(), static_cast<qsizetype>(figure.bytes.size()));
    if (figure.media == "image/svg+xml") {
        const auto svg = std::make_shared<QSvgRenderer>(bytes);
        return {svg->viewBoxF().size(), [svg](QPainter& painter, const QRectF& box) { svg->render(&painter, box); }};
    }
    const QImage image = QImage::fromData(bytes);
    return {QSizeF(image.size()), [image](QPainter& painter, const QRectF& box) { painter.drawImage(box, image); }};
}

} // namespace

void add_figure_pieces(std::vector<PagePiece>& pieces, const Figure& figure, const PageSize& page) {
    const QString label = QStringLiteral("Figure %1.").arg(figure.number);
    const PageText caption(label + u' ' + QString::fromStdString(figure.caption), page_font(8.0), page.breadth,
                           Qt::AlignLeft, static_cast<int>(label.size()));
    const Painting painting = painting_of(figure);
    constexpr double apart = 4.0 * page_unit;
    const double most = page.height - caption.height() - apart;
    const QSizeF size = painting.size.isEmpty() || most <= 0.0
                            ? QSizeF(page.breadth, 0.0)
                            : painting.size.scaled(page.breadth, most, Qt::KeepAspectRatio);
    PagePiece picture;
    picture.height = size.height();
    picture.before = 12.0 * page_unit;
    picture.keep_next = true;
    picture.paint = [painting, size, breadth = page.breadth](QPainter& painter, QPointF at) {
        painting.paint(painter, QRectF(at + QPointF(0.5 * (breadth - size.width()), 0.0), size));
    };
    pieces.push_back(std::move(picture));
    PagePiece words;
    words.height = caption.height();
    words.before = apart;
    words.paint = [caption](QPainter& painter, QPointF at) { caption.paint(painter, at, page_ink); };
    pieces.push_back(std::move(words));
}

} // namespace pithward::report
