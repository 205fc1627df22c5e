#include "libcore/formats/field_sheet.h"

#include "libcore/formats/csv_rows.h"
#include "libcore/formats/field_sheet_columns.h"
#include "libcore/formats/text_input.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace pithward {

using namespace formats;
using Owner = SheetColumn::Owner;

namespace {

constexpr std::size_t most_sheet_bytes = std::size_t{64} << 20;
constexpr std::size_t most_columns = 1000;
constexpr std::size_t most_cores = 200'000;
constexpr std::size_t most_left_out = 1000; ///< After so many it is no field sheet.
constexpr std::size_t required_columns = 3;

class SheetReader {
public:
    explicit SheetReader(CsvDialect dialect)
        : dialect_(dialect) {}

    Outcome<void> take(const CsvRow& row) {
        if (headings_.empty()) {
            return take_headings(row);
        }
        const bool blank = std::ranges::all_of(row, [](const CsvField& f) { return is_blank(f.text); });
        if (blank) {
            return {};
        }
        if (auto taken = take_core(row); !taken) {
            if (left_out_.size() == most_left_out) {
                return taken;
            }
            left_out_.push_back(std::move(taken.error()));
        }
        return {};
    }

    Outcome<FieldSheet> finish() {
        if (sites_.empty() && left_out_.empty()) {
            return fail("", "there is no core in this field sheet",
                        "give a header line with site, tree and core, and one row for each core");
        }
        FieldSheet sheet;
        sheet.sites.reserve(sites_.size());
        for (SiteEntry& entry : sites_) {
            sheet.sites.push_back(std::move(entry.head.site));
            for (TreeEntry& tree : entry.trees) {
                tree.head.tree.cores = std::move(tree.cores);
                sheet.sites.back().trees.push_back(std::move(tree.head.tree));
            }
        }
        sheet.left_out = std::move(left_out_);
        sheet.order = std::move(order_);
        return sheet;
    }

private:
    struct Heading {
        std::string name;
        const SheetColumn* column = nullptr; ///< Null for an unknown one.
    };

    Outcome<void> take_headings(const CsvRow& row) {
        if (row.size() > most_columns) {
            return csv_fault(row.front(), "there are more than " + std::to_string(most_columns) + " columns",
                             "check that it is a field sheet");
        }
        std::set<std::string> seen;
        for (const CsvField& field : row) {
            Heading heading{std::string(trimmed(field.text)), nullptr};
            const auto known = std::ranges::find(sheet_columns(), lower_case(heading.name), &SheetColumn::name);
            if (known != sheet_columns().end()) {
                heading.column = &*known;
            }
            const std::string& key = heading.column != nullptr ? heading.column->name : heading.name;
            if (!key.empty() && !seen.insert(key).second) {
                return csv_fault(field, "column " + as_utf8(heading.name) + " is there twice", "keep one of them");
            }
            headings_.push_back(std::move(heading));
        }
        for (const SheetColumn& column : sheet_columns().first(required_columns)) {
            if (!seen.contains(column.name)) {
                return csv_fault(row.front(), "the header line has no column " + column.name,
                                 "a field sheet needs the columns site, tree and core");
            }
        }
        return {};
    }

    Outcome<void> take_core(const CsvRow& row) {
        SheetRow values;
        for (std::size_t i = 0; i < row.size(); ++i) {
            const CsvField& field = row[i];
            if (is_blank(field.text)) {
                continue;
            }
            if (i >= headings_.size() || headings_[i].name.empty()) {
                return csv_fault(field, "there is no column name above this field",
                                 "name the column, or quote the field that holds a separator");
            }
            if (headings_[i].column == nullptr) {
                values.core.others[headings_[i].name] = field.text;
                continue;
            }
            const SheetColumn& column = *headings_[i].column;
            const bool keeps_blanks = column.name == "notes";
            const std::string_view text = keeps_blanks ? std::string_view(field.text) : trimmed(field.text);
            if (std::string wrong = column.set(values, text, dialect_.decimal_comma()); !wrong.empty()) {
                return csv_fault(field, column.name + " is '" + as_utf8(text.substr(0, 40)) + "'", std::move(wrong));
            }
        }
        for (const SheetColumn& column : sheet_columns().first(required_columns)) {
            if (column.get(values).empty()) {
                return csv_fault(row.front(), "this row has no " + column.name,
                                 "give each core its site, tree and core");
            }
        }
        return place_core(row, values);
    }

    struct TreeEntry {
        SheetRow head;
        std::vector<Core> cores;
    };
    struct SiteEntry {
        SheetRow head;
        std::vector<TreeEntry> trees;
        std::map<std::string, std::size_t> tree_index;
    };

    /// Puts a row's core under its tree and site, of which earlier rows may have told. A row that is refused leaves
    /// nothing behind.
    Outcome<void> place_core(const CsvRow& row, SheetRow& values) {
        if (cores_.contains({values.site.id, values.core.id})) {
            return csv_fault(row[index_of("core")],
                             "core " + as_utf8(values.core.id) + " of site " + as_utf8(values.site.id) +
                                 " is there twice",
                             "give each core of a site its own identifier");
        }
        if (cores_.size() == most_cores) {
            return csv_fault(row.front(), "there are more than 200,000 cores", "divide the sheet");
        }
        const auto known_site = site_index_.find(values.site.id);
        SiteEntry* site = known_site == site_index_.end() ? nullptr : &sites_[known_site->second];
        TreeEntry* tree = nullptr;
        if (site != nullptr) {
            const auto known_tree = site->tree_index.find(values.tree.id);
            tree = known_tree == site->tree_index.end() ? nullptr : &site->trees[known_tree->second];
        }
        auto agreed = site != nullptr ? agree(row, values, Owner::Site, site->head) : Outcome<void>();
        agreed = agreed && tree != nullptr ? agree(row, values, Owner::Tree, tree->head) : agreed;
        if (!agreed) {
            return agreed;
        }
        if (site == nullptr) {
            site_index_[values.site.id] = sites_.size();
            site = &sites_.emplace_back(SiteEntry{values, {}, {}});
        }
        if (tree == nullptr) {
            site->tree_index[values.tree.id] = site->trees.size();
            tree = &site->trees.emplace_back(TreeEntry{values, {}});
        }
        complete(values, Owner::Site, site->head);
        complete(values, Owner::Tree, tree->head);
        cores_.insert({values.site.id, values.core.id});
        order_.emplace_back(values.site.id, values.core.id);
        tree->cores.push_back(std::move(values.core));
        return {};
    }

    /// Holds what a row tells of its site or tree against what earlier rows told.
    Outcome<void> agree(const CsvRow& row, const SheetRow& values, Owner owner, const SheetRow& earlier) const {
        for (std::size_t i = 0; i < row.size() && i < headings_.size(); ++i) {
            const SheetColumn* column = headings_[i].column;
            if (column == nullptr || column->owner != owner) {
                continue;
            }
            const std::string now = column->get(values);
            const std::string before = column->get(earlier);
            if (!now.empty() && !before.empty() && now != before) {
                return csv_fault(row[i],
                                 column->name + " is '" + as_utf8(now) + "' here and '" + as_utf8(before) +
                                     "' in an earlier row of the same " + (owner == Owner::Tree ? "tree" : "site"),
                                 "make the rows agree");
            }
        }
        return {};
    }

    /// Takes over what a row tells of its site or tree that was not known.
    static void complete(const SheetRow& values, Owner owner, SheetRow& earlier) {
        for (const SheetColumn& column : sheet_columns()) {
            if (const std::string now = column.get(values);
                column.owner == owner && !now.empty() && column.get(earlier).empty()) {
                (void)column.set(earlier, now, false);
            }
        }
    }

    std::size_t index_of(std::string_view name) const {
        const auto found = std::ranges::find_if(headings_, [&](const Heading& heading) {
            return heading.column != nullptr && heading.column->name == name;
        });
        return static_cast<std::size_t>(found - headings_.begin());
    }

    CsvDialect dialect_;
    std::vector<Heading> headings_;
    std::vector<SiteEntry> sites_;
    std::map<std::string, std::size_t> site_index_;
    std::set<std::pair<std::string, std::string>> cores_;
    std::vector<std::pair<std::string, std::string>> order_;
    std::vector<Fault> left_out_;
};

} // namespace

Outcome<std::vector<Site>> read_field_sheet(std::istream& in) {
    return read_field_sheet_rows(in).and_then([](FieldSheet sheet) -> Outcome<std::vector<Site>> {
        if (!sheet.left_out.empty()) {
            return tl::unexpected(std::move(sheet.left_out.front()));
        }
        return std::move(sheet.sites);
    });
}

Outcome<FieldSheet> read_field_sheet_rows(std::istream& in) {
    const auto bytes = read_text(in, most_sheet_bytes);
    if (!bytes) {
        return tl::unexpected(bytes.error());
    }
    const std::string text = as_utf8(*bytes);
    const CsvDialect dialect = csv_dialect(text);
    SheetReader reader(dialect);
    auto read = read_csv_rows(text, dialect, [&](const CsvRow& row) { return reader.take(row); });
    if (!read) {
        return tl::unexpected(std::move(read.error()));
    }
    return reader.finish().map([&](FieldSheet sheet) {
        sheet.as_latin1 = text != *bytes;
        return sheet;
    });
}

} // namespace pithward
