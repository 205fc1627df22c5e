#include "tests/accuracy/kept_reading.h"

#include "libcore/edit/apply.h"
#include "libcore/edit/edit_json.h"
#include "libcore/edit/edits_between.h"
#include "libcore/formats/whole_file.h"

#include <fstream>
#include <iterator>
#include <ostream>
#include <string>
#include <utility>

namespace pithward::accuracy {

// A reading is kept as the edit that makes it of an empty one: that form holds every number to its last bit.

std::optional<Reading> kept_reading(const std::filesystem::path& file) {
    std::ifstream stream(file, std::ios::binary);
    if (!stream) {
        return std::nullopt;
    }
    const std::string text{std::istreambuf_iterator<char>(stream), {}};
    const auto edit = edit_from_json(text);
    if (!edit) {
        return std::nullopt;
    }
    auto reading = apply(Reading{}, *edit);
    return reading ? std::optional(std::move(*reading)) : std::nullopt;
}

bool keep_reading(const std::filesystem::path& file, Reading reading) {
    const auto sound = readied(std::move(reading));
    const auto text = sound ? edit_to_json(edits_between(Reading{}, *sound, "read")) : tl::unexpected(sound.error());
    if (!text) {
        return false;
    }
    return write_whole_file(file, true,
                            [&](std::ostream& out) -> Outcome<void> {
                                out << *text << '\n';
                                return {};
                            })
        .has_value();
}

} // namespace pithward::accuracy
