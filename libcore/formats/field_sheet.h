#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/site.h"

#include <istream>
#include <ostream>
#include <string>
#include <utility>
#include <vector>

namespace pithward {

/// Reads a field sheet (design, section 7): a CSV with a header line, one core a row, columns in any order. The columns
/// site, tree and core are required; unknown ones are kept with the core. Semicolons or tabs with decimal commas are
/// read too, as is a byte order mark. Sites, trees and cores stand in the order of the rows. Faults name line and
/// column: a value that can't be, a core that is there twice, two rows that say different things of one tree or site.
[[nodiscard]] Outcome<std::vector<Site>> read_field_sheet(std::istream& in);

/// A field sheet with the rows that could not be taken.
struct FieldSheet {
    std::vector<Site> sites;
    std::vector<Fault> left_out; ///< One for each row, with its line and column.
    bool as_latin1 = false;      ///< It is no UTF-8, and was taken as Latin-1.
    std::vector<std::pair<std::string, std::string>>
        order; ///< Site and core of each row that was taken, as they stand.
};

/// The same, row by row: each is taken, or named with what is wrong with it. Fails where there is no row, where the
/// header line won't do, or where the text is no CSV from some line on.
[[nodiscard]] Outcome<FieldSheet> read_field_sheet_rows(std::istream& in);

/// Writes a field sheet with all known columns and the unknown ones that its cores have.
[[nodiscard]] Outcome<void> write_field_sheet(std::ostream& out, const std::vector<Site>& sites);

} // namespace pithward
