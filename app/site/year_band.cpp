#include "app/site/year_band.h"

#include "app/bench/look/appearance.h"
#include "app/picture/dating/ink.h"

#include <QApplication>
#include <QFontInfo>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <limits>

namespace pithward::bench {

namespace {

constexpr double left_margin = 132.0; // Names of series and numbers of scales.
constexpr double right_margin = 14.0;

} // namespace

picture::Inks chart_inks(const QPalette& palette) {
    picture::Inks inks = picture::print_inks();
    inks.ground = palette.color(QPalette::Base);
    inks.dark = palette.color(QPalette::Text);
    if (is_dark(palette)) {
        inks.soft = QColor(0xa4, 0xa9, 0xae);
        inks.mean = QColor(0x6d, 0x75, 0x7c);
        inks.warning = QColor(0xff, 0x9a, 0x6e);
        inks.bar = QColor(0x9a, 0xa1, 0xa7);
        inks.grid = QColor(0x36, 0x39, 0x3c);
        inks.interval = QColor(0x3c, 0x43, 0x49);
        inks.depth = QColor(0x2f, 0x34, 0x38);
    }
    return inks;
}

YearBand::YearBand(YearWindow& years, QWidget* parent)
    : QWidget(parent)
    , years_(years) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    connect(&years_, &YearWindow::changed, this, qOverload<>(&QWidget::update));
}

void YearBand::leave_right(int pixels) {
    right_ = pixels;
    update();
}

double YearBand::unit() const {
    constexpr double words = 9.0; // Most words of the pictures are so many points high.
    return QFontInfo(font()).pixelSize() * 0.92 / words;
}

picture::YearAxis YearBand::axis() const {
    return {years_.first(), years_.last(), left_margin,
            std::max(left_margin + 1.0, (width() - right_) / unit() - right_margin)};
}

int YearBand::year_at(QPointF pixel) const {
    return axis().year_at(pixel.x() / unit());
}

void YearBand::paintEvent(QPaintEvent* /*event*/) {
    const picture::Inks inks = chart_inks(palette());
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), inks.ground);
    painter.scale(unit(), unit());
    const picture::YearAxis axis = this->axis();
    const QRectF place(0.0, 0.0, width() / unit(), height() / unit());
    paint_pointed(painter, axis, inks);
    paint_band(painter, axis, place, inks);
    painter.resetTransform();
    if (hasFocus()) {
        painter.setRenderHint(QPainter::Antialiasing, false);
        painter.setBrush(Qt::NoBrush);
        painter.setPen(palette().color(QPalette::Link));
        painter.drawRect(rect().adjusted(0, 0, -1, -1));
    }
}

void YearBand::paint_pointed(QPainter& painter, const picture::YearAxis& axis, const picture::Inks& inks) const {
    const auto year = years_.pointed();
    if (year && *year >= years_.first() && *year <= years_.last()) {
        const double half = std::max(1.0, 0.5 * (axis.at(1.0) - axis.at(0.0)));
        painter.fillRect(QRectF(axis.at(*year) - half, 0.0, 2.0 * half, height() / unit()), inks.interval);
    }
}

void YearBand::clicked(QPointF /*at*/, int year) {
    emit year_chosen(year);
}

void YearBand::wheelEvent(QWheelEvent* event) {
    constexpr double notch = 120.0;
    const QPoint delta = event->angleDelta();
    turned_ += (delta.y() != 0 ? delta.y() : delta.x()) / notch;
    const double whole = std::trunc(turned_);
    turned_ -= whole;
    if (whole != 0.0 && delta.y() == 0) {
        years_.move(static_cast<int>(-whole * std::max(1, (years_.last() - years_.first()) / 10)));
    } else if (whole != 0.0) {
        years_.zoom(std::pow(1.25, whole), year_at(event->position()));
    }
    event->accept();
}

void YearBand::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) {
        press_ = Press{event->position(), year_at(event->position())};
    }
}

void YearBand::mouseMoveEvent(QMouseEvent* event) {
    if (!press_) {
        years_.point_at(year_at(event->position()));
        return;
    }
    press_->dragged =
        press_->dragged || (event->position() - press_->at).manhattanLength() >= QApplication::startDragDistance();
    if (press_->dragged) {
        years_.move(press_->year - year_at(event->position()));
    }
}

void YearBand::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton && press_) {
        const bool dragged = press_->dragged;
        press_.reset();
        if (!dragged) {
            clicked(event->position() / unit(), year_at(event->position()));
        }
    }
}

void YearBand::leaveEvent(QEvent* event) {
    if (!hasFocus()) {
        years_.point_at(std::nullopt);
    }
    QWidget::leaveEvent(event);
}

bool YearBand::event(QEvent* event) {
    // These keys are its own, whatever the window's menus have on them.
    if (event->type() == QEvent::ShortcutOverride) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Home || key == Qt::Key_End || key == Qt::Key_PageUp || key == Qt::Key_PageDown) {
            event->accept();
            return true;
        }
    }
    return QWidget::event(event);
}

void YearBand::keyPressEvent(QKeyEvent* event) {
    constexpr int large_step = 10;
    const int step = event->modifiers() & Qt::ShiftModifier ? large_step : 1;
    const int from = years_.pointed().value_or((years_.first() + years_.last()) / 2);
    const int page = std::max(1, years_.last() - years_.first());
    switch (event->key()) {
    case Qt::Key_Left:
        return years_.go_to(from - step);
    case Qt::Key_Right:
        return years_.go_to(from + step);
    case Qt::Key_PageUp:
        return years_.go_to(from - page);
    case Qt::Key_PageDown:
        return years_.go_to(from + page);
    case Qt::Key_Home:
        return years_.go_to(std::numeric_limits<int>::min());
    case Qt::Key_End:
        return years_.go_to(std::numeric_limits<int>::max());
    case Qt::Key_Up:
        emit step_wanted(-1);
        return;
    case Qt::Key_Down:
        emit step_wanted(1);
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (years_.pointed()) {
            emit year_chosen(*years_.pointed());
        }
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

} // namespace pithward::bench
