#include "libcore/formats/field_sheet_columns.h"

#include "libcore/formats/text_input.h"

#include <array>
#include <charconv>
#include <cmath>
#include <optional>
#include <utility>
#include <vector>

namespace pithward::formats {

namespace {

using Owner = SheetColumn::Owner;

Site& part(SheetRow& row, const Site* /*which*/) {
    return row.site;
}
Tree& part(SheetRow& row, const Tree* /*which*/) {
    return row.tree;
}
Core& part(SheetRow& row, const Core* /*which*/) {
    return row.core;
}
const Site& part(const SheetRow& row, const Site* /*which*/) {
    return row.site;
}
const Tree& part(const SheetRow& row, const Tree* /*which*/) {
    return row.tree;
}
const Core& part(const SheetRow& row, const Core* /*which*/) {
    return row.core;
}

template <typename T>
constexpr Owner owner_of() {
    if constexpr (std::is_same_v<T, Site>) {
        return Owner::Site;
    } else if constexpr (std::is_same_v<T, Tree>) {
        return Owner::Tree;
    } else {
        return Owner::Core;
    }
}

/// The shortest text that reads back as the same number, whatever the locale.
std::string number_text(double value) {
    std::array<char, 32> text{};
    const auto [end, error] = std::to_chars(text.data(), text.data() + text.size(), value);
    return {text.data(), end};
}

std::string plain(double value) {
    return number_text(value);
}

/// A number; "31,5" in a sheet with commas between the fields is one too, but "1,234" could be two things. So could
/// "1.234" in a sheet with decimal commas, unless 1234 is more than the `greatest` that can be.
std::optional<double> sheet_number(std::string_view text, bool decimal_comma, double greatest) {
    constexpr std::size_t digits_of_a_thousand = 3;
    constexpr double thousand = 1000.0;
    const auto value = decimal_number(text, true);
    const char other_sign = decimal_comma ? '.' : ',';
    const bool clear = text.find(other_sign) == std::string_view::npos || decimals(text) != digits_of_a_thousand ||
                       (decimal_comma && value && std::abs(*value) * thousand > greatest);
    return clear ? value : std::nullopt;
}

template <typename T>
SheetColumn identifier(const char* name) {
    return {name, owner_of<T>(),
            [](SheetRow& row, std::string_view text, bool) -> std::string {
                if (has_control(text) || columns(text) > longest_identifier) {
                    return "an identifier has at most 200 characters, in one line";
                }
                part(row, static_cast<const T*>(nullptr)).id = text;
                return {};
            },
            [](const SheetRow& row) { return part(row, static_cast<const T*>(nullptr)).id; }};
}

template <typename T>
SheetColumn words(const char* name, std::string T::*member) {
    return {name, owner_of<T>(),
            [member](SheetRow& row, std::string_view text, bool) -> std::string {
                part(row, static_cast<const T*>(nullptr)).*member = text;
                return {};
            },
            [member](const SheetRow& row) { return part(row, static_cast<const T*>(nullptr)).*member; }};
}

template <typename T>
SheetColumn number(const char* name, std::optional<double> T::*member, double least, double greatest) {
    return {name, owner_of<T>(),
            [=](SheetRow& row, std::string_view text, bool comma) -> std::string {
                const auto value = sheet_number(text, comma, greatest);
                if (!value || *value < least || *value > greatest) {
                    return "it must be a number from " + plain(least) + " to " + plain(greatest);
                }
                part(row, static_cast<const T*>(nullptr)).*member = *value;
                return {};
            },
            [member](const SheetRow& row) {
                const auto& value = part(row, static_cast<const T*>(nullptr)).*member;
                return value ? number_text(*value) : std::string();
            }};
}

/// One of a few words, in upper or lower case.
template <typename T, typename Value>
struct Choice {
    std::string word;
    Value value;
};

template <typename T, typename Value, typename Field>
SheetColumn choice(const char* name, Field T::*member, std::vector<Choice<T, Value>> choices) {
    std::vector<std::string> words;
    words.reserve(choices.size());
    for (const auto& one : choices) {
        words.push_back(one.word);
    }
    auto set = [=](SheetRow& row, std::string_view text, bool) -> std::string {
        std::string known;
        for (const auto& one : choices) {
            if (lower_case(text) == one.word) {
                part(row, static_cast<const T*>(nullptr)).*member = one.value;
                return {};
            }
            known += (known.empty() ? "" : ", ") + one.word;
        }
        return "it must be one of " + known;
    };
    auto get = [=](const SheetRow& row) {
        for (const auto& one : choices) {
            if (part(row, static_cast<const T*>(nullptr)).*member == Field(one.value)) {
                return one.word;
            }
        }
        return std::string();
    };
    return {name, owner_of<T>(), std::move(set), std::move(get), std::move(words)};
}

bool is_leap(int year) {
    return (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
}

/// ISO 8601: a date, a year and month, or a year.
bool is_date(std::string_view text) {
    if (text.size() != 4 && text.size() != 7 && text.size() != 10) {
        return false;
    }
    const auto digits = [&](std::size_t first, std::size_t count) -> std::optional<int> {
        const std::string_view field = text.substr(first, count);
        return field.find_first_not_of("0123456789") == std::string_view::npos ? whole_number(field) : std::nullopt;
    };
    const auto year = digits(0, 4);
    constexpr int borers_came_up = 1850; // about then; from memory
    constexpr int surely_to_come = 2100;
    if (!year || *year < borers_came_up || *year > surely_to_come || text.size() == 4) {
        return year && *year >= borers_came_up && *year <= surely_to_come;
    }
    const auto month = text[4] == '-' ? digits(5, 2) : std::nullopt;
    if (!month || *month < 1 || *month > 12) {
        return false;
    }
    if (text.size() == 7) {
        return true;
    }
    static constexpr std::array month_days{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    const int days = *month == 2 && is_leap(*year) ? 29 : month_days[static_cast<std::size_t>(*month - 1)];
    const auto day = text[7] == '-' ? digits(8, 2) : std::nullopt;
    return day && *day >= 1 && *day <= days;
}

SheetColumn date_column(const char* name, std::string Core::*member) {
    SheetColumn column = words(name, member);
    column.set = [member](SheetRow& row, std::string_view text, bool) -> std::string {
        if (!is_date(text)) {
            return "a date is written 2024-06-30, or 2024-06, or 2024";
        }
        row.core.*member = text;
        return {};
    };
    return column;
}

SheetColumn pieces_column() {
    constexpr int most_pieces = 1000;
    return {"pieces", Owner::Core,
            [](SheetRow& row, std::string_view text, bool) -> std::string {
                const auto count = whole_number(text);
                if (!count || *count < 1 || *count > most_pieces) {
                    return "it must be a whole number from 1 to " + std::to_string(most_pieces);
                }
                row.core.pieces = *count;
                return {};
            },
            [](const SheetRow& row) { return row.core.pieces ? std::to_string(*row.core.pieces) : std::string(); }};
}

std::vector<SheetColumn> make_columns() {
    std::vector<Choice<Tree, WoodType>> woods;
    woods.reserve(all_wood_types.size());
    for (const WoodType wood : all_wood_types) {
        woods.push_back({word(wood), wood});
    }
    std::vector<Choice<Core, OuterWood>> outers;
    for (const OuterWood outer : {OuterWood::Complete, OuterWood::Unfinished, OuterWood::Lost, OuterWood::Unknown}) {
        outers.push_back({word(outer), outer});
    }
    // The bounds only catch slips of the pen; the tallest and thickest living trees lie well inside them.
    return {
        identifier<Site>("site"),
        identifier<Tree>("tree"),
        identifier<Core>("core"),
        words("species", &Tree::species),
        choice("wood", &Tree::wood, std::move(woods)),
        date_column("date_cored", &Core::date_cored),
        choice("status", &Tree::living, std::vector<Choice<Tree, bool>>{{"living", true}, {"dead", false}}),
        number("dbh_cm", &Tree::dbh_cm, 0.0, 2000.0),
        number("bark_mm", &Tree::bark_mm, 0.0, 1000.0),
        number("core_height_cm", &Core::core_height_cm, -100.0, 15'000.0),
        number("azimuth_deg", &Core::azimuth_deg, 0.0, 360.0),
        number("lean_azimuth_deg", &Tree::lean_azimuth_deg, 0.0, 360.0),
        number("lean_deg", &Tree::lean_deg, 0.0, 90.0),
        number("slope_aspect_deg", &Tree::slope_aspect_deg, 0.0, 360.0),
        number("borer_mm", &Core::borer_mm, 1.0, 100.0),
        choice("outer", &Core::outer, std::move(outers)),
        choice("pith", &Core::pith,
               std::vector<Choice<Core, FieldPith>>{{"reached", FieldPith::Reached},
                                                    {"near", FieldPith::Near},
                                                    {"missed", FieldPith::Missed},
                                                    {"unknown", FieldPith::Unknown}}),
        pieces_column(),
        words("scan", &Core::scan),
        number("latitude", &Site::latitude, -90.0, 90.0),
        number("longitude", &Site::longitude, -180.0, 180.0),
        number("elevation_m", &Site::elevation_m, -500.0, 9000.0),
        words("collector", &Core::collector),
        words("notes", &Core::notes),
    };
}

} // namespace

std::span<const SheetColumn> sheet_columns() {
    static const std::vector<SheetColumn> all = make_columns();
    return all;
}

Outcome<SheetRow> with_text(const SheetRow& row, const SheetColumn& column, std::string_view text) {
    // Built up from nothing, so that a text can be taken out too.
    SheetRow changed;
    changed.core.others = row.core.others;
    for (const SheetColumn& one : sheet_columns()) {
        const std::string cell = one.name == column.name ? std::string(trimmed(text)) : one.get(row);
        const std::string fault = cell.empty() ? std::string() : one.set(changed, cell, false);
        if (!fault.empty()) {
            return fail(one.name, "\"" + cell + "\" does not go here", fault);
        }
    }
    return changed;
}

} // namespace pithward::formats
