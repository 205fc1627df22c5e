#include "libcore/formats/json_input.h"

#include "libcore/formats/text_input.h"

#include <algorithm>

namespace pithward::formats {

namespace {

enum class Excess { Depth, Items };

/// "line 3, column 9" of a byte, counted from 1.
std::string place_of_byte(std::string_view text, std::size_t byte) {
    const std::string_view before = text.substr(0, std::min(byte > 0 ? byte - 1 : 0, text.size()));
    const auto line = static_cast<std::size_t>(std::ranges::count(before, '\n')) + 1;
    const std::size_t start = before.rfind('\n') == std::string_view::npos ? 0 : before.rfind('\n') + 1;
    return place(line, columns(before.substr(start)) + 1);
}

} // namespace

Outcome<nlohmann::json> read_json(std::istream& in) {
    const auto text = read_text(in, most_json_bytes);
    if (!text) {
        return tl::unexpected(text.error());
    }
    std::size_t items = 0;
    const auto bounded = [&](int depth, nlohmann::json::parse_event_t, nlohmann::json&) {
        if (depth > deepest_json) {
            throw Excess::Depth;
        }
        if (++items > most_json_items) {
            throw Excess::Items;
        }
        return true;
    };
    try {
        return nlohmann::json::parse(*text, bounded);
    } catch (const nlohmann::json::parse_error& error) {
        return fail(place_of_byte(*text, error.byte), "this is not JSON from here on",
                    "check that the file is complete and is JSON in UTF-8");
    } catch (const nlohmann::json::exception&) {
        return fail("", "a number in this JSON file is out of range", "correct it");
    } catch (Excess excess) {
        return fail("", excess == Excess::Depth ? "this JSON is nested too deeply" : "this JSON holds too many items",
                    "check that it is the right file");
    }
}

const nlohmann::json& member(const nlohmann::json& object, const char* key) {
    static const nlohmann::json none;
    if (!object.is_object()) {
        return none;
    }
    const auto found = object.find(key);
    return found == object.end() ? none : *found;
}

std::optional<int> whole_in(const nlohmann::json& value, int least, int greatest) {
    if (!value.is_number_integer()) {
        return std::nullopt;
    }
    // A number beyond the signed range is unsigned and turns negative here, which is caught by comparing as what it is.
    if (value.is_number_unsigned() && value.get<std::uint64_t>() > 2'000'000'000U) {
        return std::nullopt;
    }
    const auto number = value.get<std::int64_t>();
    return number >= least && number <= greatest ? std::optional(static_cast<int>(number)) : std::nullopt;
}

std::string text_from(const nlohmann::json& value) {
    return without_byte_order_marks(value.get<std::string>());
}

std::optional<std::string> short_text(const nlohmann::json& value) {
    if (!value.is_string()) {
        return std::nullopt;
    }
    const std::string text = text_from(value);
    const bool usable = !has_control(text) && columns(text) <= longest_identifier;
    return usable ? std::optional(std::string(trimmed(text))) : std::nullopt;
}

std::string nth(const char* what, std::size_t index) {
    return std::string(what) + " " + std::to_string(index + 1);
}

Outcome<std::optional<Millimetres>> width_from(const nlohmann::json& value, const std::string& where) {
    if (value.is_null()) {
        return std::optional<Millimetres>();
    }
    const double mm = value.is_number() ? value.get<double>() : -1.0;
    if (!(mm >= 0.0 && mm <= greatest_width_mm)) {
        return fail(where, "this is no width in mm", "give a number, 0 for a locally absent ring, or null for a gap");
    }
    return std::optional(Millimetres(mm));
}

} // namespace pithward::formats
