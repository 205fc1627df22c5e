#pragma once

#include <string>
#include <vector>

namespace pithward::dating {

/// The tree of each series, and how it was found out.
struct Trees {
    std::vector<std::string> of_series;
    std::string remark;  ///< In words, for the output.
    bool guessed = true; ///< False where nothing could be told, so each series is its own tree.
};

/// Trees by the common stem of the identifiers: without the last character, which tells the cores of a tree apart,
///
/// 1. where it is a letter after a digit (A01a and A01b are of the tree A01); each identifier for itself;
/// 2. where it is a digit after a digit, and in all identifiers that end so it is 1 to 4, and at least one stem has two
///    series, and there are at least as many stems as a third of these series (004041 and 004042 are of the tree
///    00404).
///
/// Blanks, points, dashes and underscores at a stem's end are dropped. Identifiers of any other form are trees of their
/// own.
[[nodiscard]] Trees trees_by_stem(const std::vector<std::string>& identifiers);

} // namespace pithward::dating
