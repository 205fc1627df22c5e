#pragma once

#include <QColor>
#include <QObject>
#include <QPalette>

namespace pithward::bench {

/// Light or dark, for the whole program.
enum class Scheme { System, Light, Dark };

[[nodiscard]] QPalette light_palette();
[[nodiscard]] QPalette dark_palette();
[[nodiscard]] bool is_dark(const QPalette& palette);
/// The neutral ground round a scan, so that the wood's own colours are seen as they are.
[[nodiscard]] QColor scan_ground(const QPalette& palette);

/// Keeps the program's palette as a person or the desktop wants it.
class Appearance : public QObject {
    Q_OBJECT

public:
    explicit Appearance(QObject* parent = nullptr);
    [[nodiscard]] Scheme scheme() const { return scheme_; }
    void use(Scheme scheme);

private:
    void apply();

    Scheme scheme_ = Scheme::System;
    bool desktop_dark_ = false;
};

} // namespace pithward::bench
