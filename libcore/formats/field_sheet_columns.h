#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/site.h"

#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace pithward::formats {

/// What one row of a field sheet is about.
struct SheetRow {
    Site site; ///< Without its trees.
    Tree tree; ///< Without its cores.
    Core core;
};

/// A column of the field sheet. A new one is one line in the list of field_sheet_columns.cpp.
struct SheetColumn {
    /// Whose property it is: all rows of one site, or of one tree, must agree in it.
    enum class Owner { Site, Tree, Core };

    std::string name;
    Owner owner;
    /// Puts a text that is not empty into a row; answers with what is wrong with it, or with nothing.
    /// `decimal_comma`: how the sheet writes numbers.
    std::function<std::string(SheetRow& row, std::string_view text, bool decimal_comma)> set;
    /// The text for a row; empty where nothing is known.
    std::function<std::string(const SheetRow& row)> get;
    std::vector<std::string> choices = {}; ///< The only words that it can hold; empty where it holds any.
};

/// All known columns in the design's order; the first three are the identifiers of site, tree and core.
[[nodiscard]] std::span<const SheetColumn> sheet_columns();

/// The row with another text in one column; an empty one stands for "not known". Fails where the column can't hold it.
[[nodiscard]] Outcome<SheetRow> with_text(const SheetRow& row, const SheetColumn& column, std::string_view text);

} // namespace pithward::formats
