#pragma once

#include "app/picture/dating/sheet.h"
#include "libcore/specimen/outcome.h"

#include <string>
#include <vector>

namespace pithward::report {

/// A way to keep a sheet. A new one is a function and one line in the list of sheet_file.cpp.
struct SheetFormat {
    const char* extension; ///< With its point, in lower case.
    Outcome<std::string> (*bytes)(const picture::Sheet& sheet);
};

/// The format of a file by its ending.
[[nodiscard]] Outcome<const SheetFormat*> sheet_format_of(const std::string& file);

/// A sheet as SVG pictures none of which is higher than this, in points, unless a single row is.
[[nodiscard]] std::vector<std::string> sheet_svgs(const picture::Sheet& sheet, double greatest_height);

} // namespace pithward::report
