#pragma once

#include "libcore/edit/json_values.h"
#include "libcore/specimen/units.h"

#include <nlohmann/json.hpp>

#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <vector>

namespace pithward::exact_json {

// Fields of JSON objects, checked as they are read. Each throws Malformed, naming the field.

[[nodiscard]] const Json& field(const Json& object, const char* key);
/// Null where the field is null or not there.
[[nodiscard]] const Json* optional_field(const Json& object, const char* key);
[[nodiscard]] const Json& list(const Json& object, const char* key);

[[nodiscard]] double number(const Json& object, const char* key, double least, double greatest);
[[nodiscard]] std::int64_t whole(const Json& object, const char* key, std::int64_t least, std::int64_t greatest);
[[nodiscard]] bool truth(const Json& object, const char* key);
[[nodiscard]] std::string text(const Json& object, const char* key);

[[nodiscard]] std::int64_t id(const Json& object, const char* key = "id");
[[nodiscard]] std::size_t leg(const Json& object);
[[nodiscard]] double probability(const Json& object, const char* key);
[[nodiscard]] Millimetres length(const Json& object, const char* key);
[[nodiscard]] std::optional<Millimetres> optional_length(const Json& object, const char* key);
[[nodiscard]] ImagePoint point(const Json& object, const char* key);
[[nodiscard]] std::optional<ImagePoint> optional_point(const Json& object, const char* key);
[[nodiscard]] std::vector<ImagePoint> points(const Json& object, const char* key);

[[nodiscard]] Json write(ImagePoint at);
[[nodiscard]] Json write(const std::vector<ImagePoint>& points);
[[nodiscard]] Json write(const std::optional<ImagePoint>& at);
[[nodiscard]] Json write(const std::optional<Millimetres>& length);

/// The value whose `word` a field holds.
template <typename T>
[[nodiscard]] T one_of(const Json& object, const char* key, std::initializer_list<T> all) {
    const std::string found = text(object, key);
    for (const T value : all) {
        if (word(value) == found) {
            return value;
        }
    }
    throw Malformed{"the field " + std::string(key) + " holds an unknown word"};
}

} // namespace pithward::exact_json
