#include "libcore/formats/identifiers.h"

#include "libcore/formats/text_input.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <set>

namespace pithward::formats {

namespace {

constexpr std::size_t head_characters = 3;

std::string cleaned(std::string_view text) {
    std::string clean(trimmed(text));
    std::ranges::replace_if(clean, is_control, '_');
    return clean.empty() ? "series" : clean;
}

bool fits(std::string_view text, const IdentifierRoom& room) {
    const std::size_t length = columns(text);
    return length <= room.longest && !(room.minus_at_end_is_unclear && length == room.longest && text.ends_with('-'));
}

bool is_kept(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || byte >= 0x80;
}

std::string shortened(std::string_view text, std::size_t longest) {
    std::string kept;
    std::ranges::copy_if(text, std::back_inserter(kept), is_kept);
    if (kept.empty()) {
        kept = "series";
    }
    const std::size_t length = columns(kept);
    if (length <= longest) {
        return kept;
    }
    const std::size_t tail = longest > head_characters ? longest - head_characters : 0;
    return kept.substr(0, column_offset(kept, longest - tail)) + kept.substr(column_offset(kept, length - tail));
}

/// The text with "_2" or the like at its end, in place of what there is no room for.
std::string numbered(std::string_view text, int number, std::size_t longest) {
    const std::string ending = "_" + std::to_string(number);
    const std::size_t stem = longest > ending.size() ? longest - ending.size() : 0;
    return std::string(text.substr(0, column_offset(text, stem))) + ending;
}

} // namespace

std::vector<std::string> fitting_identifiers(const std::vector<IdentifierRoom>& wanted) {
    std::vector<std::string> result(wanted.size());
    std::vector<bool> settled(wanted.size(), false);
    std::set<std::string> taken;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        result[i] = cleaned(wanted[i].wanted);
        settled[i] = fits(result[i], wanted[i]) && taken.insert(result[i]).second;
    }
    std::map<std::string, int> last_numbers;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        if (settled[i]) {
            continue;
        }
        const std::size_t longest = wanted[i].longest;
        const std::string stem = fits(result[i], wanted[i]) ? result[i] : shortened(result[i], longest);
        result[i] = stem;
        int& number = last_numbers.try_emplace(stem, 1).first->second;
        while (!taken.insert(result[i]).second) {
            result[i] = numbered(stem, ++number, longest);
        }
    }
    return result;
}

} // namespace pithward::formats
