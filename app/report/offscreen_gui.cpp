#include "app/report/offscreen_gui.h"

#include <QGuiApplication>

namespace pithward::report {

namespace {

// The application keeps references to these.
int count = 1;
char name[] = "pithward";
char* arguments[] = {name, nullptr};

} // namespace

OffscreenGui::OffscreenGui() {
    if (QCoreApplication::instance() == nullptr) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        application_ = std::make_unique<QGuiApplication>(count, arguments);
    }
}

OffscreenGui::~OffscreenGui() = default;

} // namespace pithward::report
