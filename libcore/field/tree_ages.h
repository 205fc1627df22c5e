#pragma once

#include "libcore/field/remark.h"
#include "libcore/measure/age.h"
#include "libcore/specimen/reading.h"
#include "libcore/specimen/site.h"

#include <optional>

namespace pithward::field {

/// A core of a tree with the year of its pith.
struct DatedPith {
    Core core;
    YearRange pith;
};

/// Two cores of a tree whose years of the pith differ beyond both intervals. Nothing where they were taken at heights
/// that differ by more than 20 cm (assumed): the tree took years to grow from one to the other.
[[nodiscard]] std::optional<Remark> tree_ages_remark(const DatedPith& one, const DatedPith& other);

/// The finding of a reading that such a remark about the other core has become, whatever years it tells; null where
/// there is none.
[[nodiscard]] const Finding* tree_ages_finding(const Reading& reading, const Core& other);

} // namespace pithward::field
