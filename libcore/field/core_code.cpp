#include "libcore/field/core_code.h"

#include <algorithm>

namespace pithward::field {

namespace {

constexpr char between_names = '/';
constexpr std::string_view slash_escape = "%2F";
constexpr std::string_view percent_escape = "%25";

std::string escaped(std::string_view name) {
    std::string text;
    for (const char c : name) {
        if (c == between_names) {
            text += slash_escape;
        } else if (c == '%') {
            text += percent_escape;
        } else {
            text += c;
        }
    }
    return text;
}

std::string unescaped(std::string_view text) {
    std::string name;
    while (!text.empty()) {
        if (text.starts_with(slash_escape) || text.starts_with("%2f")) {
            name += between_names;
            text.remove_prefix(slash_escape.size());
        } else {
            name += text.front();
            text.remove_prefix(text.starts_with(percent_escape) ? percent_escape.size() : 1);
        }
    }
    return name;
}

} // namespace

std::string core_code(const CodeNames& names) {
    return escaped(names.site) + between_names + escaped(names.core);
}

std::optional<CodeNames> names_in_code(std::string_view text) {
    const std::size_t at = text.find(between_names);
    if (at == std::string_view::npos || std::ranges::count(text, between_names) != 1) {
        return std::nullopt;
    }
    CodeNames names{unescaped(text.substr(0, at)), unescaped(text.substr(at + 1))};
    return names.site.empty() || names.core.empty() ? std::nullopt : std::optional(std::move(names));
}

std::string former_core_code(const CodeNames& names) {
    return names.site + between_names + names.core;
}

} // namespace pithward::field
