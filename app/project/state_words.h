#pragma once

#include <QString>
#include <string_view>

namespace pithward::bench {

/// The state of a reading, as a project tells it, in words for people.
[[nodiscard]] QString state_in_words(std::string_view state);

} // namespace pithward::bench
