#include "app/bench/window/window_program.h"

#include "app/bench/look/language.h"
#include "app/bench/window/main_window.h"
#include "app/bench/window/window_memory.h"

#include <QApplication>
#include <QSettings>
#include <algorithm>
#include <cstdio>
#include <cstdlib>

static void load_icons() {
    Q_INIT_RESOURCE(icons); // a static library's resources are not loaded by themselves
}

namespace pithward::bench {

namespace {

constexpr auto scheme_key = "window/colours";

Scheme stored_scheme(const QSettings& settings) {
    return static_cast<Scheme>(std::clamp(settings.value(scheme_key, 0).toInt(), 0, static_cast<int>(Scheme::Dark)));
}

/// Qt ends the program itself, with an abort and many lines, where it can't reach a display.
void end_without_display(QtMsgType type, const QMessageLogContext& /*context*/, const QString& /*text*/) {
    if (type == QtFatalMsg) {
        std::fputs("pithward: there is no display for the window; without one, scans are measured with "
                   "pithward measure SCAN\n",
                   stderr);
        std::_Exit(2);
    }
}

} // namespace

int run_window(int argc, char** argv, const std::vector<std::string>& files) {
    const QtMessageHandler usual = qInstallMessageHandler(end_without_display);
    QApplication application(argc, argv);
    qInstallMessageHandler(usual);
    QApplication::setApplicationName("pithward");
    QApplication::setOrganizationName("pithward");
    QApplication::setApplicationVersion(PITHWARD_VERSION); // each edit tells it
    load_icons();
    QSettings settings;
    speak(application, WindowMemory(settings).language());
    Appearance appearance;
    appearance.use(stored_scheme(settings));
    MainWindow window(open_scan, appearance);
    WindowMemory memory(settings);
    window.keep_in(memory);
    window.show();
    if (!files.empty()) {
        QStringList paths;
        std::ranges::transform(files, std::back_inserter(paths),
                               [](const auto& file) { return QString::fromStdString(file); });
        window.control().open(paths);
    }
    const int status = QApplication::exec();
    settings.setValue(scheme_key, static_cast<int>(appearance.scheme()));
    memory.save(window);
    return status;
}

} // namespace pithward::bench
