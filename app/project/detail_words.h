#pragma once

#include "libcore/formats/field_sheet_columns.h"

#include <QString>

namespace pithward::bench {

/// What a column of the field sheet is called in the window, with its unit: "Diameter, cm".
[[nodiscard]] QString name_of(const formats::SheetColumn& column);
/// What the column means, in a sentence; empty where its name says it.
[[nodiscard]] QString help_of(const formats::SheetColumn& column);
/// One of the words that a column chooses from, "living"; "not known" for an empty one.
[[nodiscard]] QString choice_in_words(const std::string& word);

} // namespace pithward::bench
