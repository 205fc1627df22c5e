#pragma once

#include "libcore/specimen/wood.h"
#include "libimaging/boundary/flat_strip.h"
#include "libimaging/boundary/mark.h"

#include <span>
#include <vector>

namespace pithward::boundary {

/// What the marks of a strip were read from; kept for the steps that follow.
struct Marks {
    std::vector<Mark> all; ///< In path order.
};

/// How the boundaries of one kind of wood look. A new kind is one file with a function that answers with its model, and
/// one line in the list of wood_models.cpp.
struct WoodModel {
    WoodType type;
    /// Every place that may be a boundary, with its signs and its log odds. From bark to pith.
    std::vector<Mark> (*marks)(const FlatStrip& strip);
};

[[nodiscard]] WoodModel conifer_model();

/// All models, one for each kind of wood that can be read.
[[nodiscard]] std::span<const WoodModel> wood_models();

} // namespace pithward::boundary
