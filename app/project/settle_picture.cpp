#include "app/project/settle_picture.h"

#include <QMouseEvent>
#include <QPainter>

namespace pithward::bench {

SettlePicture::SettlePicture(QWidget* parent)
    : QWidget(parent) {
    setMinimumSize(320, 240);
    setCursor(Qt::CrossCursor);
    setAccessibleName(tr("The scan"));
}

void SettlePicture::show_picture(const QImage& picture, int reduction) {
    picture_ = picture;
    reduction_ = reduction;
    words_.clear();
    update();
}

void SettlePicture::say(const QString& words) {
    picture_ = {};
    words_ = words;
    update();
}

void SettlePicture::show_marks(std::vector<Mark> marks) {
    marks_ = std::move(marks);
    update();
}

void SettlePicture::choose(const std::optional<ImagePoint>& place) {
    place_ = place;
    update();
}

QRectF SettlePicture::frame() const {
    const QSizeF size = QSizeF(picture_.size()).scaled(QSizeF(this->size()), Qt::KeepAspectRatio);
    return {QPointF(0.5 * (width() - size.width()), 0.5 * (height() - size.height())), size};
}

QPointF SettlePicture::on_widget(ImagePoint at) const {
    const QRectF box = frame();
    return {box.x() + (at.x + 0.5) / reduction_ / picture_.width() * box.width(),
            box.y() + (at.y + 0.5) / reduction_ / picture_.height() * box.height()};
}

void SettlePicture::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.fillRect(rect(), palette().color(QPalette::Mid));
    if (picture_.isNull()) {
        painter.setPen(palette().color(QPalette::WindowText));
        painter.drawText(rect(), Qt::AlignCenter | Qt::TextWordWrap, words_);
        return;
    }
    painter.setRenderHints(QPainter::SmoothPixmapTransform | QPainter::Antialiasing);
    painter.drawImage(frame(), picture_);
    const auto draw_place = [&](ImagePoint at, const QString& words, double radius) {
        const QPointF middle = on_widget(at);
        painter.setBrush(Qt::NoBrush);
        for (const auto& [colour, width] : {std::pair{QColor(Qt::white), 4.0}, std::pair{QColor(20, 20, 20), 2.0}}) {
            painter.setPen(QPen(colour, width));
            painter.drawEllipse(middle, radius, radius);
        }
        if (words.isEmpty()) {
            return;
        }
        const QFontMetricsF metrics(font());
        QRectF box = metrics.boundingRect(words).adjusted(-4.0, -2.0, 4.0, 2.0);
        box.moveCenter(middle);
        box.moveLeft(middle.x() + radius + 4.0); // beside it, where no other code is mostly
        if (box.right() > width()) {
            box.moveRight(middle.x() - radius - 4.0);
        }
        painter.fillRect(box, QColor(255, 255, 255, 220));
        painter.setPen(QColor(20, 20, 20));
        painter.drawText(box, Qt::AlignCenter, words);
    };
    constexpr double small = 6.0;
    constexpr double large = 11.0;
    for (const Mark& mark : marks_) {
        draw_place(mark.at, mark.words, small);
    }
    if (place_) {
        draw_place(*place_, {}, large);
    }
}

void SettlePicture::mousePressEvent(QMouseEvent* event) {
    const QRectF box = picture_.isNull() ? QRectF() : frame();
    if (event->button() != Qt::LeftButton || !box.contains(event->position())) {
        return;
    }
    const QPointF share = event->position() - box.topLeft();
    emit chosen({share.x() / box.width() * picture_.width() * reduction_ - 0.5,
                 share.y() / box.height() * picture_.height() * reduction_ - 0.5});
}

} // namespace pithward::bench
