#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace pithward::field {

/// The names in a code on a label or a mount.
struct CodeNames {
    std::string site;
    std::string core;
    friend bool operator==(const CodeNames&, const CodeNames&) = default;
};

/// What the code of a core holds: "SITE/CORE". A / or % within a name is written as %2F or %25, so that the one /
/// between the names can be told; all else stays as it is, in UTF-8.
[[nodiscard]] std::string core_code(const CodeNames& names);

/// The names in a code; nothing where it is no "SITE/CORE".
[[nodiscard]] std::optional<CodeNames> names_in_code(std::string_view text);

/// The same as labels had it before: with the names as they are.
[[nodiscard]] std::string former_core_code(const CodeNames& names);

} // namespace pithward::field
