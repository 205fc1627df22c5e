#include "libcore/formats/text_input.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <utility>

namespace pithward::formats {

namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

/// Length of the well-formed UTF-8 sequence at the start of a text; 0 where there is none.
std::size_t sequence_length(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    if (text.empty()) {
        return 0;
    }
    const unsigned char first = byte(0);
    if (first < 0x80) {
        return 1;
    }
    const std::size_t length = first >= 0xF0 && first <= 0xF4   ? 4
                               : first >= 0xE0 && first <= 0xEF ? 3
                               : first >= 0xC2 && first <= 0xDF ? 2
                                                                : 0;
    if (length == 0 || text.size() < length) {
        return 0;
    }
    for (std::size_t i = 1; i < length; ++i) {
        if ((byte(i) & 0xC0) != 0x80) {
            return 0;
        }
    }
    // Overlong forms, surrogates and what lies beyond Unicode (RFC 3629, section 4).
    const bool bad = (first == 0xE0 && byte(1) < 0xA0) || (first == 0xED && byte(1) > 0x9F) ||
                     (first == 0xF0 && byte(1) < 0x90) || (first == 0xF4 && byte(1) > 0x8F);
    return bad ? 0 : length;
}

} // namespace

Outcome<std::string> read_text(std::istream& in, std::size_t limit) {
    std::string text;
    std::string block(std::size_t{1} << 16, '\0');
    while (in) {
        in.read(block.data(), static_cast<std::streamsize>(block.size()));
        text.append(block, 0, static_cast<std::size_t>(in.gcount()));
        if (text.size() > limit) {
            return fail("", "more than " + std::to_string(limit >> 20) + " MB is too large for a file of this kind",
                        "check that it is the right file");
        }
    }
    if (in.bad()) {
        return fail("", "reading broke off", "check the disk or the connection and try again");
    }
    if (const std::size_t zero = text.find('\0'); zero != std::string::npos) {
        return fail("", "this is not plain text (byte " + std::to_string(zero + 1) + " is zero)",
                    "check that it is the right file, saved as plain text in UTF-8");
    }
    // Old systems end a text with the character 26.
    const std::size_t last = text.find_last_not_of("\x1A\r\n \t");
    if (const std::size_t end_mark = text.find('\x1A', last == std::string::npos ? 0 : last);
        end_mark != std::string::npos) {
        text.resize(end_mark);
    }
    return without_byte_order_marks(std::move(text));
}

Outcome<std::string> read_utf8(std::istream& in, std::size_t limit) {
    return read_text(in, limit).map([](const std::string& text) { return as_utf8(text); });
}

std::string without_byte_order_marks(std::string text) {
    if (text.find(byte_order_mark) == std::string::npos) {
        return text;
    }
    std::string kept;
    kept.reserve(text.size());
    for (const char c : text) {
        kept += c;
        if (kept.ends_with(byte_order_mark)) {
            kept.resize(kept.size() - byte_order_mark.size());
        }
    }
    return kept;
}

Outcome<std::vector<Line>> split_lines(std::string_view text) {
    std::vector<Line> lines;
    while (!text.empty()) {
        if (lines.size() == most_lines) {
            return fail(place(most_lines), "a file of more than " + std::to_string(most_lines) + " lines is not read",
                        "check that it is the right file");
        }
        const std::size_t end = std::min(text.find_first_of("\r\n"), text.size());
        lines.push_back({text.substr(0, end), lines.size() + 1});
        std::size_t next = std::min(text.find_first_not_of('\r', end), text.size());
        if (next < text.size() && text[next] == '\n') {
            ++next;
        } else {
            next = std::min(end + 1, text.size());
        }
        text.remove_prefix(next);
    }
    return lines;
}

std::string place(std::size_t line) {
    return "line " + std::to_string(line);
}

std::string place(std::size_t line, std::size_t column) {
    return place(line) + ", column " + std::to_string(column);
}

Fault in_file(const std::string& file, Fault fault) {
    fault.where = fault.where.empty() ? file : file + ", " + fault.where;
    return fault;
}

std::string_view trimmed(std::string_view text, std::string_view blanks) {
    const std::size_t first = text.find_first_not_of(blanks);
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

bool is_blank(std::string_view text) {
    return trimmed(text).empty();
}

std::string lower_case(std::string_view text) {
    std::string lower(text);
    for (char& c : lower) {
        if (c >= 'A' && c <= 'Z') {
            c = static_cast<char>(c - 'A' + 'a');
        }
    }
    return lower;
}

bool is_control(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return byte < 0x20 || byte == 0x7F;
}

bool has_control(std::string_view text) {
    return std::ranges::any_of(text, is_control);
}

std::optional<int> whole_number(std::string_view text) {
    int value = 0;
    const char* end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(text.data(), end, value);
    return error == std::errc() && stop == end ? std::optional(value) : std::nullopt;
}

std::optional<double> decimal_number(std::string_view text, bool comma) {
    std::string pointed(text);
    if (comma) {
        std::ranges::replace(pointed, ',', '.');
    }
    double value = 0.0;
    const char* end = pointed.data() + pointed.size();
    const auto [stop, error] = std::from_chars(pointed.data(), end, value);
    const bool number = error == std::errc() && stop == end && std::isfinite(value);
    return number ? std::optional(value) : std::nullopt;
}

std::size_t decimals(std::string_view text) {
    const std::size_t sign = text.find_first_of(".,");
    return sign == std::string_view::npos ? 0 : text.size() - sign - 1;
}

std::size_t columns(std::string_view text) {
    std::size_t count = 0;
    while (!text.empty()) {
        text.remove_prefix(std::max<std::size_t>(1, sequence_length(text)));
        ++count;
    }
    return count;
}

std::size_t column_offset(std::string_view text, std::size_t column) {
    std::size_t offset = 0;
    for (; column > 0 && offset < text.size(); --column) {
        offset += std::max<std::size_t>(1, sequence_length(text.substr(offset)));
    }
    return offset;
}

std::string as_utf8(std::string_view text) {
    std::string result;
    result.reserve(text.size());
    while (!text.empty()) {
        const std::size_t length = sequence_length(text);
        if (length > 0) {
            result.append(text.substr(0, length));
        } else {
            const auto byte = static_cast<unsigned char>(text[0]);
            result += static_cast<char>(0xC0 | (byte >> 6));
            result += static_cast<char>(0x80 | (byte & 0x3F));
        }
        text.remove_prefix(std::max<std::size_t>(1, length));
    }
    return result;
}

} // namespace pithward::formats
