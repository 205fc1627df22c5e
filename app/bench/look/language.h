#pragma once

#include <QString>
#include <span>

class QCoreApplication;

namespace pithward::bench {

/// A language that the window speaks. Another one is one line in language.cpp and one file in resources/translations.
struct Language {
    const char* code; ///< ISO 639-1.
    const char* name; ///< In the language itself.
};

[[nodiscard]] std::span<const Language> languages();

/// Lets the program speak a language, before its first window is made; that of the system for an empty code. What it
/// does not know stays English. Numbers are written as the system's language writes them.
void speak(QCoreApplication& program, const QString& code);

} // namespace pithward::bench
