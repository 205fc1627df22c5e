#pragma once

#include "libcore/specimen/edit.h"

#include <string>

namespace pithward {

/// The edit that makes `after` of `before`, both of them `readied`, as one group with this label: for what reads a core
/// anew, turns a path round, or brings back what once was. What is alike stays untouched. The id and the core of a
/// reading are not changed by edits and are not looked at.
[[nodiscard]] Edit edits_between(const Reading& before, const Reading& after, std::string label);

} // namespace pithward
