#include "app/bench/look/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>
#include <array>

namespace pithward::bench {

namespace {

constexpr std::array known_languages{Language{"en", "English"}, Language{"de", "Deutsch"}};

/// Our own words, or those of Qt's dialogs.
void add_words(QCoreApplication& program, const QLocale& locale, const QString& file, const QString& folder) {
    auto* words = new QTranslator(&program);
    if (words->load(locale, file, "_", folder)) {
        QCoreApplication::installTranslator(words);
    } else {
        delete words;
    }
}

} // namespace

std::span<const Language> languages() {
    return known_languages;
}

void speak(QCoreApplication& program, const QString& code) {
    const QLocale locale = code.isEmpty() ? QLocale() : QLocale(code);
    if (locale.language() == QLocale::English) {
        return; // the words of the code
    }
    add_words(program, locale, "pithward", ":/translations");
    add_words(program, locale, "qtbase", QLibraryInfo::path(QLibraryInfo::TranslationsPath));
}

} // namespace pithward::bench
