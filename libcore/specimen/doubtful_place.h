#pragma once

#include "libcore/specimen/finding.h"
#include "libcore/specimen/units.h"

#include <string>

namespace pithward {

/// A place on a scan that may hold a ring too many or too few, as the wood alone tells it.
struct DoubtfulPlace {
    /// Year of the ring that it is about, as the reading dates it: the ring in which a boundary may be overlooked, or
    /// just inside of which the tree may have laid none, or whose inner boundary may be none.
    Year ring;
    bool too_few = true;      ///< The change puts a ring in; else it takes one out.
    double probability = 0.0; ///< That the change is right.
    std::string scan = {};    ///< The file that its leg is on.
    std::size_t leg = 0;
    ImagePoint at;
    Millimetres s; ///< Along the whole path.
    ProposedChange change;
    std::string reason; ///< What the wood shows there, in words.
    friend bool operator==(const DoubtfulPlace&, const DoubtfulPlace&) = default;
};

} // namespace pithward
