#include "app/bench/scan_view/hold_to_hide.h"

#include <QAbstractSpinBox>
#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>

namespace pithward::bench {

namespace {

bool is_typing() {
    const QWidget* focus = QApplication::focusWidget();
    return qobject_cast<const QLineEdit*>(focus) != nullptr || qobject_cast<const QAbstractSpinBox*>(focus) != nullptr;
}

} // namespace

HoldToHide::HoldToHide(QObject* parent)
    : QObject(parent) {
    qApp->installEventFilter(this);
}

bool HoldToHide::eventFilter(QObject* watched, QEvent* event) {
    const bool pressed = event->type() == QEvent::KeyPress;
    if ((pressed || event->type() == QEvent::KeyRelease) && watched->isWidgetType()) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_H && key->modifiers() == Qt::NoModifier && !is_typing()) {
            if (!key->isAutoRepeat()) {
                emit held(pressed);
            }
            return true;
        }
    } else if (event->type() == QEvent::ApplicationDeactivate || event->type() == QEvent::WindowDeactivate) {
        emit held(false); // the release may go to another window
    }
    return QObject::eventFilter(watched, event);
}

} // namespace pithward::bench
