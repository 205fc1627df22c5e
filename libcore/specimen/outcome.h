#pragma once

#include <tl/expected.hpp>

#include <string>
#include <utility>

namespace pithward {

/// Why something could not be done, for a person: where it happened, what is wrong, what to do about it.
struct Fault {
    std::string where;  ///< The file, with line and column where known; may be empty.
    std::string what;   ///< What is wrong, in plain words.
    std::string remedy; ///< What the user can do.

    /// One line: "where: what; remedy".
    [[nodiscard]] std::string line() const;
};

/// A text with blanks in the place of line ends and other control characters, so that it stays one line on a terminal
/// and does nothing there.
[[nodiscard]] std::string in_one_line(std::string text);

/// A value, or the reason why there is none. No exception crosses a library border.
template <typename T>
using Outcome = tl::expected<T, Fault>;

/// Shorthand for returning a fault from a function that answers with an Outcome.
[[nodiscard]] inline tl::unexpected<Fault> fail(std::string where, std::string what, std::string remedy) {
    return tl::unexpected<Fault>(Fault{std::move(where), std::move(what), std::move(remedy)});
}

} // namespace pithward
