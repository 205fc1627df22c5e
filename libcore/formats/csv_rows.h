#pragma once

#include "libcore/specimen/outcome.h"

#include <cstddef>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace pithward::formats {

/// One field of a CSV row, without quotes, outer blanks and guard (csv_guard.h), and where it begins (from 1; columns
/// are characters).
struct CsvField {
    std::string text;
    std::size_t line = 0;
    std::size_t column = 0;
};
using CsvRow = std::vector<CsvField>;

/// How a spreadsheet of some country wrote its CSV.
struct CsvDialect {
    char separator = ',';
    /// With a separator that is no comma, numbers may have a decimal comma.
    [[nodiscard]] bool decimal_comma() const { return separator != ','; }
};

/// The separator: what a first line "sep=;" names, else whichever of semicolon, tab and comma the first row has most,
/// quoted fields left aside.
[[nodiscard]] CsvDialect csv_dialect(std::string_view text);

/// Calls `take` with each row that is not blank; a row ends with LF, CR LF or CR, fields may be quoted and then hold
/// line ends (RFC 4180). Stops at the first fault, be it of the text or of `take`.
[[nodiscard]] Outcome<void> read_csv_rows(std::string_view text, CsvDialect dialect,
                                          const std::function<Outcome<void>(const CsvRow&)>& take);

/// A field to write, guarded (csv_guard.h) and quoted if it must be.
[[nodiscard]] std::string csv_field(std::string_view content);

/// A fault at a field.
[[nodiscard]] tl::unexpected<Fault> csv_fault(const CsvField& at, std::string what, std::string remedy);

} // namespace pithward::formats
