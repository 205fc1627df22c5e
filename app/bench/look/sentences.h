#pragma once

#include <QString>
#include <string>

namespace pithward::bench {

/// What the libraries say to people in English (a finding's reason and proposal, why a candidate was turned down), in
/// the language of the window. They are kept in the project as they are, so that two windows in two languages can share
/// one; a sentence that is not in the list of sentences.cpp, such as one that a person wrote, stays as it is.
[[nodiscard]] QString in_window_language(const std::string& sentence);

} // namespace pithward::bench
