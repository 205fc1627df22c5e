#include "app/report/offscreen_gui.h"

#include <QGuiApplication>
#include <cstdio>

namespace pithward::report {

namespace {

// The application keeps references to these.
int gui_argument_count = 1;
char gui_name[] = "pithward";
char* arguments[] = {gui_name, nullptr};

} // namespace

OffscreenGui::OffscreenGui() {
    if (QCoreApplication::instance() == nullptr) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        // What Qt has to say of a desktop that isn't there is none of the user's business.
        const QtMessageHandler usual = qInstallMessageHandler([](QtMsgType type, const auto&, const QString& text) {
            if (type == QtFatalMsg) {
                std::fprintf(stderr, "%s\n", qPrintable(text));
            }
        });
        application_ = std::make_unique<QGuiApplication>(gui_argument_count, arguments);
        qInstallMessageHandler(usual);
    }
}

OffscreenGui::~OffscreenGui() = default;

} // namespace pithward::report
