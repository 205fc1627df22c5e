#pragma once

#include "libcore/specimen/wood.h"
#include "libimaging/boundary/breaks.h"
#include "libimaging/boundary/flat_strip.h"
#include "libimaging/boundary/mark.h"
#include "libimaging/boundary/outer_end.h"
#include "libimaging/boundary/sequence.h"
#include "libimaging/boundary/wood/wood_model.h"

#include <vector>

namespace pithward::boundary {

/// What is known of a path's marks once its outer end and breaks are.
struct Chosen {
    std::vector<Mark> marks; ///< In path order, in the wood only.
    Sequence sequence;
    std::vector<double> s_mm; ///< Breaks taken off.
};

/// Judges the marks of a path as a whole: those in bark and breaks are left out, and where growth had ended the wood's
/// edge is one of them. `told` is what is known of the outer end.
[[nodiscard]] Chosen choose(const FlatStrip& strip, std::vector<Mark> marks, const OuterEnd& outer,
                            const std::vector<Gap>& gaps, OuterWood told, const SequenceOptions& options);

/// The latewood of those chosen, in woods where it shows only between neighbours.
void measure_latewood(const WoodModel& model, const FlatStrip& strip, Chosen& chosen);

} // namespace pithward::boundary
