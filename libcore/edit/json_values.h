#pragma once

#include "libcore/specimen/edit.h"

#include <nlohmann/json_fwd.hpp>

#include <string>

namespace pithward::exact_json {

using Json = nlohmann::json;

// The values of a reading as JSON, exactly: a number comes back as the same number. Reading throws `Malformed`, inside
// libcore/edit and libcore/record alone, which catch it where they answer the outside. Sizes are bounded: texts to
// 20,000 bytes, lists to a million items; places to a million pixels.

/// What is wrong with a piece of JSON, in words.
struct Malformed {
    std::string what;
};

[[nodiscard]] Json write(const Boundary& boundary);
[[nodiscard]] Json write(const Candidate& candidate);
[[nodiscard]] Json write(const Break& stretch);
[[nodiscard]] Json write(const AbsentRing& ring);
[[nodiscard]] Json write(const Finding& finding);
[[nodiscard]] Json write(const Path& path);
[[nodiscard]] Json write(const Calibration& calibration);
[[nodiscard]] Json write(const ReadingHead& head);

void read(const Json& json, Boundary& boundary);
void read(const Json& json, Candidate& candidate);
void read(const Json& json, Break& stretch);
void read(const Json& json, AbsentRing& ring);
void read(const Json& json, Finding& finding);
void read(const Json& json, Path& path);
void read(const Json& json, Calibration& calibration);
void read(const Json& json, ReadingHead& head);

} // namespace pithward::exact_json
