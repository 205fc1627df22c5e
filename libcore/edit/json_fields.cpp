#include "libcore/edit/json_fields.h"

namespace pithward::exact_json {

namespace {

constexpr std::size_t most_list_items = 1'000'000;
constexpr std::size_t longest_text = 20'000;
constexpr std::int64_t greatest_id = std::int64_t{1} << 52U;
constexpr double farthest_px = 10'000'000.0;
constexpr double longest_mm = 1'000'000.0;

[[noreturn]] void refuse(const char* key, const char* what) {
    throw Malformed{"the field " + std::string(key) + " " + what};
}

double bounded(const Json& value, const char* key, double least, double greatest) {
    const double read = value.is_number() ? value.get<double>() : 0.0;
    if (!value.is_number() || !(read >= least && read <= greatest)) {
        refuse(key, "is no number in its range");
    }
    return read;
}

ImagePoint point_from(const Json& value, const char* key) {
    if (!value.is_array() || value.size() != 2) {
        refuse(key, "is no place on a scan");
    }
    return {bounded(value[0], key, -farthest_px, farthest_px), bounded(value[1], key, -farthest_px, farthest_px)};
}

} // namespace

const Json* optional_field(const Json& object, const char* key) {
    if (!object.is_object()) {
        throw Malformed{"something is no object with fields"};
    }
    const auto found = object.find(key);
    return found == object.end() || found->is_null() ? nullptr : &*found;
}

const Json& field(const Json& object, const char* key) {
    const Json* found = optional_field(object, key);
    if (found == nullptr) {
        refuse(key, "is missing");
    }
    return *found;
}

const Json& list(const Json& object, const char* key) {
    const Json& value = field(object, key);
    if (!value.is_array() || value.size() > most_list_items) {
        refuse(key, "is no list, or too long a one");
    }
    return value;
}

double number(const Json& object, const char* key, double least, double greatest) {
    return bounded(field(object, key), key, least, greatest);
}

std::int64_t whole(const Json& object, const char* key, std::int64_t least, std::int64_t greatest) {
    const Json& value = field(object, key);
    // Unsigned numbers beyond the signed range would turn negative.
    const bool readable = value.is_number_integer() &&
                          (!value.is_number_unsigned() || value.get<std::uint64_t>() <= std::uint64_t{1} << 62U);
    const std::int64_t read = readable ? value.get<std::int64_t>() : 0;
    if (!readable || read < least || read > greatest) {
        refuse(key, "is no whole number in its range");
    }
    return read;
}

bool truth(const Json& object, const char* key) {
    const Json& value = field(object, key);
    if (!value.is_boolean()) {
        refuse(key, "is neither true nor false");
    }
    return value.get<bool>();
}

std::string text(const Json& object, const char* key) {
    const Json& value = field(object, key);
    if (!value.is_string() || value.get_ref<const std::string&>().size() > longest_text) {
        refuse(key, "is no text, or too long a one");
    }
    return value.get<std::string>();
}

std::int64_t id(const Json& object, const char* key) {
    return whole(object, key, 0, greatest_id);
}

std::size_t leg(const Json& object) {
    return static_cast<std::size_t>(whole(object, "leg", 0, most_list_items));
}

double probability(const Json& object, const char* key) {
    return number(object, key, 0.0, 1.0);
}

Millimetres length(const Json& object, const char* key) {
    return Millimetres(number(object, key, -longest_mm, longest_mm));
}

std::optional<Millimetres> optional_length(const Json& object, const char* key) {
    return optional_field(object, key) != nullptr ? std::optional(length(object, key)) : std::nullopt;
}

ImagePoint point(const Json& object, const char* key) {
    return point_from(field(object, key), key);
}

std::optional<ImagePoint> optional_point(const Json& object, const char* key) {
    const Json* value = optional_field(object, key);
    return value != nullptr ? std::optional(point_from(*value, key)) : std::nullopt;
}

std::vector<ImagePoint> points(const Json& object, const char* key) {
    std::vector<ImagePoint> all;
    const Json& values = list(object, key);
    all.reserve(values.size());
    for (const Json& value : values) {
        all.push_back(point_from(value, key));
    }
    return all;
}

Json write(ImagePoint at) {
    return Json::array({at.x, at.y});
}

Json write(const std::vector<ImagePoint>& points) {
    Json all = Json::array();
    for (const ImagePoint at : points) {
        all.push_back(write(at));
    }
    return all;
}

Json write(const std::optional<ImagePoint>& at) {
    return at ? write(*at) : Json();
}

Json write(const std::optional<Millimetres>& length) {
    return length ? Json(length->value()) : Json();
}

} // namespace pithward::exact_json
