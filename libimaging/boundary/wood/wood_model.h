#pragma once

#include "libcore/specimen/wood.h"
#include "libimaging/boundary/flat_strip.h"
#include "libimaging/boundary/mark.h"
#include "libimaging/boundary/relief.h"
#include "libimaging/boundary/sequence.h"
#include "libimaging/strip/lanes.h"

#include <span>
#include <vector>

namespace pithward::boundary {

/// How the boundaries of one kind of wood look. A new kind is one file with a function that answers with its model, and
/// one line in the list of wood_models.cpp.
struct WoodModel {
    WoodType type;
    /// What its rings are traced by and read from.
    Signal (*signal)(const Relief& relief, const Lanes& lanes);
    /// Every place of the flattened strip that may be a boundary, with its signs and its log odds. From bark to pith.
    std::vector<Mark> (*marks)(const FlatStrip& strip);
    SequenceOptions sequence; ///< How its marks are judged together.
    /// Marks turned down of more confidence than this are findings. Lower where few are seen, so that looking costs
    /// little.
    double overlooked_from = 0.1;
    /// Boundaries of less confidence than this are findings: more than a flag asks (`sure` in findings.h), since many a
    /// mistake that nobody was asked about had 0.8 to 0.95 (docs/accuracy.md).
    double asked_under = 0.95;
    /// Whether colour tells bark from the wood next to it. In rendered hardwoods, whose vessels have colours of their
    /// own, it made the outer end no better.
    bool bark_by_colour = false;
    /// Whether the cut across a core's inner end is so much stronger an edge than a ring's that rings which meet it at
    /// a slant are followed along it: then what lies beyond the wood has no say (inner_end.h). A conifer's rings hold.
    bool cut_outdoes_rings = false;
    /// How sure the program is at most that a ring ends at the wood's edge.
    double surest_edge = 0.98;
    /// Whether bark shows lines like this wood's boundaries, which then don't speak for wood.
    bool bark_has_lines = false;
    /// Sets the latewood of boundaries (all of the path, in order) where it can be told only with their neighbours
    /// known; null where the marks know it already, or never.
    void (*measure_latewood)(const FlatStrip& strip, std::span<Mark> boundaries) = nullptr;
};

[[nodiscard]] WoodModel conifer_model();
[[nodiscard]] WoodModel ring_porous_model();
[[nodiscard]] WoodModel diffuse_porous_model();

/// All models, one for each kind of wood that can be read.
[[nodiscard]] std::span<const WoodModel> wood_models();

[[nodiscard]] const WoodModel& wood_model(WoodType type);

} // namespace pithward::boundary
