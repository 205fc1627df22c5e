#include "app/bench/window/window_memory.h"

#include <QMainWindow>
#include <QSplitter>

namespace pithward::bench {

namespace {

constexpr auto geometry_key = "window/geometry";
constexpr auto splitter_key = "window/parts/%1";
constexpr auto recent_key = "window/recent";
constexpr auto language_key = "window/language";

} // namespace

WindowMemory::WindowMemory(QSettings& settings)
    : settings_(settings) {}

void WindowMemory::restore(QMainWindow& window) const {
    window.restoreGeometry(settings_.value(geometry_key).toByteArray());
    for (QSplitter* splitter : window.findChildren<QSplitter*>()) {
        splitter->restoreState(settings_.value(QString(splitter_key).arg(splitter->objectName())).toByteArray());
    }
}

void WindowMemory::save(const QMainWindow& window) {
    settings_.setValue(geometry_key, window.saveGeometry());
    for (const QSplitter* splitter : window.findChildren<QSplitter*>()) {
        settings_.setValue(QString(splitter_key).arg(splitter->objectName()), splitter->saveState());
    }
}

QStringList WindowMemory::recent() const {
    return settings_.value(recent_key).toStringList();
}

void WindowMemory::note_opened(const QStringList& files) {
    QStringList kept = recent();
    for (const QString& file : files) {
        kept.removeAll(file);
        kept.prepend(file);
    }
    settings_.setValue(recent_key, kept.mid(0, most_recent));
}

QString WindowMemory::language() const {
    return settings_.value(language_key).toString();
}

void WindowMemory::choose_language(const QString& code) {
    settings_.setValue(language_key, code);
}

} // namespace pithward::bench
