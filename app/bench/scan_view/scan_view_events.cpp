#include "app/bench/scan_view/scan_view.h"
#include "app/picture/nearest_mark.h"

#include <QApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QScrollBar>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

// How gestures move the scan and reach the tool in hand.

namespace pithward::bench {

namespace {

constexpr double key_zoom = 1.25;

} // namespace

void ScanView::resizeEvent(QResizeEvent*) {
    const bool fitted = fitted_;
    set_view(view_.resized(viewport()->size()));
    if (fitted) {
        show_all();
    }
}

void ScanView::wheelEvent(QWheelEvent* event) {
    const QPoint turn = event->angleDelta();
    if (!event->pixelDelta().isNull() && event->modifiers() == Qt::NoModifier && event->phase() != Qt::NoScrollPhase) {
        set_view(view_.panned(event->pixelDelta())); // two fingers on a touch pad move the scan
    } else if (event->modifiers() & Qt::ShiftModifier) {
        set_view(view_.panned(QPointF(turn.y() + turn.x(), 0)));
    } else if (event->modifiers() & Qt::ControlModifier) {
        this->turn(turn.y() / 120.0); // a degree a notch
    } else {
        const double notches = (turn.y() != 0 ? turn.y() : turn.x()) / 120.0;
        set_view(view_.zoomed(std::pow(key_zoom, notches), event->position(), least_scale(), greatest_scale));
    }
    pointed(event->position());
    event->accept();
}

void ScanView::mousePressEvent(QMouseEvent* event) {
    press_ = Press{event->position(), event->position(), false, event->button()};
    if (event->button() == Qt::LeftButton && !tool_) {
        bending_ = event->modifiers() & Qt::ControlModifier;
        pointed(event->position());
        if (!pith_grip_.take() && !path_grip_.take()) {
            grip_.take();
        }
    }
}

void ScanView::mouseMoveEvent(QMouseEvent* event) {
    const QPointF at = event->position();
    if (press_) {
        press_->dragged |= (at - press_->at).manhattanLength() >= QApplication::startDragDistance();
        if (press_->dragged && dragging()) {
            viewport()->setCursor(Qt::SizeAllCursor);
            cursor_ = at;
            if (pith_grip_.dragging()) {
                pith_grip_.drag(view_.to_image(at));
            } else if (path_grip_.dragging()) {
                path_grip_.drag(view_.to_image(at));
            } else {
                grip_.drag(view_.to_image(at));
            }
            viewport()->update();
        } else if (press_->dragged) {
            viewport()->setCursor(Qt::ClosedHandCursor);
            set_view(view_.panned(at - press_->last));
            press_->last = at;
        }
        return;
    }
    if (tool_) {
        tool_->move(view_.to_image(at));
        viewport()->update();
    }
    bending_ = event->modifiers() & Qt::ControlModifier;
    moved_ = true;
    pointed(at);
}

void ScanView::mouseReleaseEvent(QMouseEvent* event) {
    if (!press_) {
        return;
    }
    const Press press = *std::exchange(press_, std::nullopt);
    viewport()->setCursor(tool_ ? Qt::CrossCursor : Qt::OpenHandCursor);
    const auto drop = grip_.let_go();
    const auto bend = path_grip_.let_go();
    const auto pith = pith_grip_.let_go();
    if (press.dragged) {
        if (drop) {
            emit boundary_dropped(*drop);
        } else if (bend) {
            emit path_dropped(*bend);
        } else if (pith) {
            emit pith_dropped(*pith);
        }
        pointed(event->position());
        return;
    }
    if (press.button == Qt::LeftButton) {
        clicked(event->position());
    } else if (press.button == Qt::RightButton && tool_) {
        answer(tool_->key(Tool::Key::TakeBack));
    } else if (press.button == Qt::RightButton) {
        pointed(event->position());
        emit menu_wanted(event->globalPosition().toPoint());
    }
}

void ScanView::mouseDoubleClickEvent(QMouseEvent* event) {
    if (tool_ && event->button() == Qt::LeftButton) {
        answer(tool_->double_click(view_.to_image(event->position())));
    } else if (event->button() == Qt::LeftButton && !grip_.under() && model_.core() != nullptr) {
        const ImagePoint at = view_.to_image(event->position());
        if (picture::foot_on_path(model_.core()->reading, model_.scan()->opened->name(), at,
                                  model_.core()->half_breadth_px)) {
            emit wood_double_clicked(at, event->modifiers() & Qt::ShiftModifier);
        }
    }
}

bool ScanView::tool_key(int key) {
    if (key == Qt::Key_Escape && dragging()) {
        grip_.give_up();
        path_grip_.give_up();
        pith_grip_.give_up();
        press_.reset();
        viewport()->update();
        return true;
    }
    if (!tool_) {
        return false;
    }
    switch (key) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        answer(tool_->key(Tool::Key::Finish));
        return true;
    case Qt::Key_Escape:
        answer(tool_->key(Tool::Key::GiveUp));
        return true;
    case Qt::Key_Backspace:
        answer(tool_->key(Tool::Key::TakeBack));
        return true;
    case Qt::Key_R:
        answer(tool_->key(Tool::Key::Reverse));
        return true;
    default:
        return false;
    }
}

bool ScanView::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride && tool_) {
        // With a tool in hand its keys are the tool's, whatever else they do.
        switch (static_cast<QKeyEvent*>(event)->key()) {
        case Qt::Key_Return:
        case Qt::Key_Enter:
        case Qt::Key_Escape:
        case Qt::Key_Backspace:
        case Qt::Key_R:
            event->accept();
            return true;
        default:
            break;
        }
    }
    if (event->type() == QEvent::FocusIn || event->type() == QEvent::FocusOut) {
        viewport()->update(); // its frame shows where the keys go
    }
    return QAbstractScrollArea::event(event);
}

void ScanView::bending(bool held) {
    bending_ = held;
    if (cursor_ && !press_) {
        pointed(*cursor_);
    }
}

void ScanView::keyReleaseEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Control) {
        bending(false);
    }
    QAbstractScrollArea::keyReleaseEvent(event);
}

void ScanView::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Control) {
        bending(true);
    }
    if (tool_key(event->key())) {
        return;
    }
    const double step = event->modifiers() & Qt::ShiftModifier ? 0.8 : 0.15;
    const QPointF across(step * viewport()->width(), 0);
    const QPointF down(0, step * viewport()->height());
    switch (event->key()) {
    case Qt::Key_Left:
        return set_view(view_.panned(across));
    case Qt::Key_Right:
        return set_view(view_.panned(-across));
    case Qt::Key_Up:
        return set_view(view_.panned(down));
    case Qt::Key_Down:
        return set_view(view_.panned(-down));
    default:
        QAbstractScrollArea::keyPressEvent(event);
    }
}

bool ScanView::viewportEvent(QEvent* event) {
    if (event->type() == QEvent::Leave) {
        pointed({-1, -1});
    }
    return QAbstractScrollArea::viewportEvent(event);
}

void ScanView::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
        refresh_marks();
    }
    QAbstractScrollArea::changeEvent(event);
}

void ScanView::sync_scroll_bars() {
    // The bars tell where the view is on the scan; their unit is one view pixel at the present scale.
    const QSize scan = scan_size();
    const QRectF whole = view_.painter_transform().mapRect(QRectF(QPointF(), QSizeF(scan)));
    syncing_ = true;
    const auto sync = [](QScrollBar* bar, double start, double length, int page) {
        const int travel = std::max(0, static_cast<int>(length) - page);
        bar->setPageStep(page);
        bar->setSingleStep(std::max(1, page / 10));
        bar->setRange(0, travel);
        bar->setValue(static_cast<int>(-start));
    };
    sync(horizontalScrollBar(), whole.left(), whole.width(), viewport()->width());
    sync(verticalScrollBar(), whole.top(), whole.height(), viewport()->height());
    syncing_ = false;
}

void ScanView::scrollContentsBy(int dx, int dy) {
    if (!syncing_) {
        set_view(view_.panned(QPointF(dx, dy)));
    }
}

} // namespace pithward::bench
