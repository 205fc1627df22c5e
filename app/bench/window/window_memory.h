#pragma once

#include <QSettings>
#include <QStringList>

class QMainWindow;
class QMenu;

namespace pithward::bench {

/// What a window keeps from one day to the next: where it stands, how its parts share the room, and which scans were
/// open last.
class WindowMemory {
public:
    explicit WindowMemory(QSettings& settings);

    void restore(QMainWindow& window) const;
    void save(const QMainWindow& window);

    /// The latest first.
    [[nodiscard]] QStringList recent() const;
    void note_opened(const QStringList& files);

    /// The code of the language that a person chose; empty for the system's.
    [[nodiscard]] QString language() const;
    void choose_language(const QString& code);

    static constexpr int most_recent = 10;

private:
    QSettings& settings_;
};

} // namespace pithward::bench
