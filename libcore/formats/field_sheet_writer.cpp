#include "libcore/formats/csv_rows.h"
#include "libcore/formats/field_sheet.h"
#include "libcore/formats/field_sheet_columns.h"

#include <set>

namespace pithward {

using namespace formats;

namespace {

void add_field(std::string& row, std::string_view text) {
    row += (row.empty() ? "" : ",") + csv_field(text);
}

} // namespace

Outcome<void> write_field_sheet(std::ostream& out, const std::vector<Site>& sites) {
    std::set<std::string> others;
    for (const Site& site : sites) {
        for (const Tree& tree : site.trees) {
            for (const Core& core : tree.cores) {
                for (const auto& [name, text] : core.others) {
                    others.insert(name);
                }
            }
        }
    }
    std::string header;
    for (const SheetColumn& column : sheet_columns()) {
        add_field(header, column.name);
    }
    for (const std::string& name : others) {
        add_field(header, name);
    }
    out << header << '\n';
    for (const Site& site : sites) {
        for (const Tree& tree : site.trees) {
            for (const Core& core : tree.cores) {
                const SheetRow values{site, tree, core};
                std::string row;
                for (const SheetColumn& column : sheet_columns()) {
                    add_field(row, column.get(values));
                }
                for (const std::string& name : others) {
                    const auto found = core.others.find(name);
                    add_field(row, found == core.others.end() ? "" : found->second);
                }
                out << row << '\n';
            }
        }
    }
    return {};
}

} // namespace pithward
