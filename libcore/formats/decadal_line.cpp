#include "libcore/formats/decadal_line.h"

#include <algorithm>
#include <cstdlib>
#include <utility>
#include <vector>

namespace pithward::formats {

namespace {

constexpr int widest_step = 999'999;

std::string_view slice(std::string_view text, std::size_t first, std::size_t count) {
    const std::size_t begin = column_offset(text, first);
    return text.substr(begin, column_offset(text.substr(begin), count));
}

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

tl::unexpected<Misfit> misfit(std::size_t column, std::string what) {
    return tl::unexpected<Misfit>(Misfit{column, std::move(what), false});
}

std::string quoted(std::string_view text) {
    return "'" + as_utf8(trimmed(text)) + "'";
}

/// The first word of a text, quoted.
std::string quoted_word(std::string_view text) {
    const std::string_view words = trimmed(text);
    return quoted(words.substr(0, words.find_first_of(" \t")));
}

/// A comment without control characters and blanks at its ends.
std::string comment_from(std::string_view text) {
    std::string comment(text);
    std::ranges::replace_if(comment, is_control, ' ');
    return std::string(trimmed(comment));
}

/// Identifier and year from columns 1 to 12; `rest` becomes the text from column 13 on.
tl::expected<DecadalLine, Misfit> head_by_columns(const Line& line, std::string_view& rest) {
    const std::string_view text = line.text;
    const std::string_view year_text = slice(text, identifier_columns, year_end_column - identifier_columns);
    const auto year = whole_number(trimmed(year_text, " "));
    if (year_text.size() != year_end_column - identifier_columns || !year || !is_digit(year_text.back())) {
        return misfit(identifier_columns + 1,
                      is_blank(year_text) ? "there is no year" : quoted(year_text) + " is no year");
    }
    DecadalLine head;
    head.number = line.number;
    head.year = *year;
    std::string_view identifier = slice(text, 0, identifier_columns);
    if (identifier.ends_with('-') && is_digit(year_text.front())) {
        identifier.remove_suffix(1);
        head.year = -*year;
        head.sign_open = !identifier.ends_with(' ');
    }
    head.identifier = trimmed(identifier, " ");
    if (head.identifier.empty()) {
        return misfit(1, "there is no identifier");
    }
    if (has_control(head.identifier)) {
        return misfit(1, "the identifier holds a tab or another control character");
    }
    rest = text.substr(column_offset(text, year_end_column));
    return head;
}

/// Puts blanks before the first value to use: they hold the places of years without values. Fails where it is not clear
/// whether the line's year is that of its first column or of its first value.
bool skip_leading_blanks(DecadalLine& line, std::size_t blanks) {
    if (blanks == 0) {
        return true;
    }
    const auto into_decade = static_cast<std::size_t>(line.year - decade_of(line.year));
    if (into_decade == 0) {
        line.year += static_cast<int>(blanks);
    } else if (into_decade != blanks) {
        return false;
    }
    std::shift_left(line.values.begin(), line.values.begin() + static_cast<std::ptrdiff_t>(line.count),
                    static_cast<std::ptrdiff_t>(blanks));
    line.count -= blanks;
    line.layout = DecadalLine::Layout::BlanksAsYears;
    return true;
}

/// Up to ten values of six columns. `rest` begins with column 13.
std::optional<Misfit> values_by_columns(DecadalLine& line, std::string_view rest) {
    bool aligned = true;
    std::size_t first_value = values_a_line;
    std::string_view stray;
    std::size_t offset = 0;
    std::size_t i = 0;
    for (; i < values_a_line && offset < rest.size(); ++i) {
        const std::string_view cell = rest.substr(offset, value_columns);
        const std::string_view number = trimmed(cell, " ");
        const std::size_t column = year_end_column + i * value_columns + 1;
        if (!number.empty()) {
            const auto value = whole_number(number);
            if (!value) {
                stray = rest.substr(offset);
                break;
            }
            // What touches the text before it fills its six columns or was cut in two by them.
            const bool touches = cell.front() != ' ' && (offset == 0 || rest[offset - 1] != ' ');
            if (touches && number.size() != value_columns) {
                return Misfit{column, "the value " + quoted(cell) + " does not stand in its columns", false};
            }
            first_value = std::min(first_value, i);
            aligned = aligned && cell.size() == value_columns && cell.back() != ' ';
            line.values[i] = *value;
            line.count = i + 1;
        }
        offset += value_columns;
    }
    const std::size_t stray_column = year_end_column + i * value_columns + 1;
    if (line.count == 0) {
        return Misfit{year_end_column + 1, stray.empty() ? "there is no value" : quoted_word(stray) + " is no value",
                      false};
    }
    const std::size_t after = year_end_column + line.count * value_columns;
    const bool has_blanks = std::count(line.values.begin(), line.values.begin() + line.count, std::nullopt) > 0;
    if (has_blanks && (!aligned || !skip_leading_blanks(line, first_value) || line.count > room_in_decade(line.year))) {
        return Misfit{year_end_column + 1, "it is not clear which years the blank columns stand for", aligned};
    }
    if (stray.empty() && i == values_a_line && offset < rest.size()) {
        stray = rest.substr(offset);
        if (rest[offset - 1] != ' ' && is_digit(stray.front())) {
            return Misfit{comment_column + 1, "the tenth value runs on beyond its columns", false};
        }
    } else if (!trimmed(stray).empty() && !line.ends_decade() && !line.ends_with_mark()) {
        return Misfit{std::max(after + 1, stray_column), quoted_word(stray) + " is no value", false};
    }
    line.comment = comment_from(stray);
    if (!aligned) {
        line.layout = DecadalLine::Layout::NotAligned;
    }
    return std::nullopt;
}

struct Token {
    std::string_view text;
    std::size_t offset = 0;
};

std::vector<Token> tokens_of(std::string_view text) {
    std::vector<Token> tokens;
    std::size_t begin = text.find_first_not_of(" \t");
    while (begin != std::string_view::npos) {
        const std::size_t end = std::min(text.find_first_of(" \t", begin), text.size());
        tokens.push_back({text.substr(begin, end - begin), begin});
        begin = text.find_first_not_of(" \t", end);
    }
    return tokens;
}

/// Values between spaces, whatever their columns. True only if they fill the decade or end with an end mark in it.
bool values_by_spaces(DecadalLine& line, std::string_view rest) {
    line.values = {};
    line.count = 0;
    line.comment.clear();
    for (const Token& token : tokens_of(rest)) {
        const auto value = whole_number(token.text);
        if (!value || std::abs(*value) > widest_step || line.count == values_a_line) {
            line.comment = comment_from(rest.substr(token.offset));
            break;
        }
        line.values[line.count++] = *value;
    }
    line.layout = DecadalLine::Layout::BySpaces;
    return line.ends_decade() || (line.ends_with_mark() && line.count <= room_in_decade(line.year));
}

/// Identifier, year and values by spaces or tabs alone. Only a tab can end an identifier that holds spaces, and a
/// number after blanks at the start of a line may be anything.
bool line_by_spaces(DecadalLine& line, const Line& from) {
    const std::string_view text = from.text;
    const std::size_t tab = text.find('\t');
    const bool tabbed = tab != std::string_view::npos && !is_blank(text.substr(0, tab));
    const std::vector<Token> tokens = tokens_of(tabbed ? text.substr(tab) : text);
    if (tokens.size() < (tabbed ? 1U : 2U)) {
        return false;
    }
    Token year = tabbed ? tokens[0] : tokens[1];
    year.offset += tabbed ? tab : 0;
    const auto number = whole_number(year.text);
    line.number = from.number;
    line.identifier = trimmed(text.substr(0, year.offset));
    const bool indented_number = !tabbed && tokens[0].offset > 0 && whole_number(line.identifier);
    if (!number || std::abs(*number) > greatest_decadal_year || indented_number || has_control(line.identifier) ||
        line.identifier.size() > longest_identifier) {
        return false;
    }
    line.year = *number;
    return values_by_spaces(line, text.substr(year.offset + year.text.size()));
}

/// True where the numbers in a line say that it was meant as one of measurements.
bool looks_like_values(const Line& line) {
    std::string_view rest;
    if (head_by_columns(line, rest)) {
        const std::string_view first = trimmed(rest).substr(0, 1);
        return !first.empty() && (is_digit(first[0]) || first[0] == '-');
    }
    const std::size_t head = column_offset(line.text, year_end_column);
    const auto tokens = tokens_of(line.text.substr(head));
    const auto numbers = std::ranges::count_if(tokens, [](const Token& t) { return whole_number(t.text).has_value(); });
    const bool mostly_numbers = numbers > 0 && static_cast<std::size_t>(numbers) * 4 >= tokens.size() * 3;
    return mostly_numbers && (tokens.size() >= 3 || std::ranges::any_of(line.text.substr(0, head), is_digit));
}

tl::expected<DecadalLine, Misfit> parse_by_columns(const Line& line) {
    std::string_view rest;
    auto parsed = head_by_columns(line, rest);
    if (parsed) {
        if (auto fault = values_by_columns(*parsed, rest)) {
            return tl::unexpected<Misfit>(std::move(*fault));
        }
        const auto outside = [](const std::optional<int>& v) { return v && std::abs(*v) > widest_step; };
        if (std::ranges::any_of(parsed->values, outside)) {
            return misfit(year_end_column + 1, "a value has more than six digits");
        }
    }
    return parsed;
}

} // namespace

bool DecadalLine::comment_begins_with_number() const {
    const auto value = whole_number(comment.substr(0, comment.find_first_of(" \t")));
    return count == values_a_line && value && !is_end_mark(*value);
}

tl::expected<DecadalLine, Misfit> parse_decadal_line(const Line& line) {
    auto parsed = parse_by_columns(line);
    if (parsed || parsed.error().is_final) {
        return parsed;
    }
    std::string_view rest;
    if (auto head = head_by_columns(line, rest);
        head && (rest.empty() || rest.front() == ' ' || rest.front() == '\t')) {
        if (values_by_spaces(*head, rest)) {
            return head;
        }
    }
    DecadalLine whole;
    if (line_by_spaces(whole, line)) {
        return whole;
    }
    return parsed;
}

bool is_marked_header(std::string_view text) {
    const std::string_view mark = slice(text, identifier_columns - 2, 3);
    const bool numbered = mark.size() == 3 && mark[0] == ' ' && mark[1] >= '1' && mark[1] <= '3' && mark[2] == ' ';
    return numbered && !parse_by_columns({text, 1});
}

bool is_decadal_header(std::string_view text, std::size_t place) {
    if (is_marked_header(text) && slice(text, identifier_columns - 1, 1)[0] == static_cast<char>('0' + place)) {
        return true;
    }
    return !parse_decadal_line({text, 1}) && !looks_like_values({text, 1});
}

} // namespace pithward::formats
