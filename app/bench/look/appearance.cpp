#include "app/bench/look/appearance.h"

#include "app/bench/look/desktop_scheme.h"

#include <QApplication>
#include <QStyleFactory>

namespace pithward::bench {

namespace {

struct Inks {
    QColor window, base, alternate, text, muted, button, accent, on_accent, link, notice, on_notice;
};

QPalette palette_of(const Inks& inks) {
    QPalette palette(inks.button, inks.window);
    palette.setColor(QPalette::WindowText, inks.text);
    palette.setColor(QPalette::Text, inks.text);
    palette.setColor(QPalette::ButtonText, inks.text);
    palette.setColor(QPalette::Base, inks.base);
    palette.setColor(QPalette::AlternateBase, inks.alternate);
    palette.setColor(QPalette::PlaceholderText, inks.muted);
    palette.setColor(QPalette::Highlight, inks.accent);
    palette.setColor(QPalette::HighlightedText, inks.on_accent);
    palette.setColor(QPalette::Link, inks.link);
    palette.setColor(QPalette::ToolTipBase, inks.notice);
    palette.setColor(QPalette::ToolTipText, inks.on_notice);
    // Edges a little lighter and darker than the ground, so that lines between parts stay quiet.
    palette.setColor(QPalette::Light, inks.window.lighter(108));
    palette.setColor(QPalette::Midlight, inks.window.lighter(104));
    palette.setColor(QPalette::Mid, inks.window.darker(115));
    palette.setColor(QPalette::Dark, inks.window.darker(135));
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::ToolTipText}) {
        palette.setColor(QPalette::Disabled, role, inks.muted);
    }
    return palette;
}

} // namespace

QPalette light_palette() {
    return palette_of({.window = "#f3f3f1",
                       .base = "#ffffff",
                       .alternate = "#f7f7f5",
                       .text = "#20252b",
                       .muted = "#858a90",
                       .button = "#ececea",
                       .accent = "#cfe0f2",
                       .on_accent = "#10263d",
                       .link = "#1d5b9c",
                       .notice = "#fbf1d6",
                       .on_notice = "#3d2f08"});
}

QPalette dark_palette() {
    return palette_of({.window = "#292b2e",
                       .base = "#1f2123",
                       .alternate = "#25272a",
                       .text = "#e3e5e7",
                       .muted = "#868b91",
                       .button = "#35383c",
                       .accent = "#32506f",
                       .on_accent = "#f2f6fa",
                       .link = "#86b8ec",
                       .notice = "#46391a",
                       .on_notice = "#f6e7bf"});
}

bool is_dark(const QPalette& palette) {
    return palette.color(QPalette::Window).lightness() < 128;
}

QColor scan_ground(const QPalette& palette) {
    return is_dark(palette) ? QColor("#141516") : QColor("#d9d9d7");
}

Appearance::Appearance(QObject* parent)
    : QObject(parent)
    , desktop_dark_(is_dark(QApplication::palette())) {
    QApplication::setStyle(QStyleFactory::create("Fusion"));
    apply();
    auto* desktop = new DesktopScheme(this);
    connect(desktop, &DesktopScheme::told, this, [this](bool dark) {
        desktop_dark_ = dark;
        apply();
    });
    desktop->ask();
}

void Appearance::use(Scheme scheme) {
    scheme_ = scheme;
    apply();
}

void Appearance::apply() {
    const bool dark = scheme_ == Scheme::Dark || (scheme_ == Scheme::System && desktop_dark_);
    QApplication::setPalette(dark ? dark_palette() : light_palette());
}

} // namespace pithward::bench
