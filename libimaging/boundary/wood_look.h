#pragma once

#include "libimaging/boundary/texture.h"

#include <vector>

namespace pithward::boundary {

/// A quantity of wood as a straight line of its tone, with the usual deviation from it.
struct LookLine {
    double constant = 0.0;
    double slope = 0.0;
    double deviation = 1.0;

    [[nodiscard]] double strangeness(double tone, double value) const {
        return (value - constant - slope * tone) / deviation;
    }
};

/// What wood looks like: its colour and roughness for each tone, and the range of its tones.
struct WoodLook {
    LookLine red;
    LookLine blue;
    LookLine rough;
    double darkest = 0.0;
    double lightest = 0.0;

    /// Learnt from columns that are wood. At least 10 of them.
    explicit WoodLook(const std::vector<ColumnLook>& wood);

    /// How much a column speaks for something else than wood: positive for, negative against. Colour alone can't
    /// decide: sapwood and heartwood differ in it too.
    [[nodiscard]] double evidence_against(const ColumnLook& look) const;

    /// Deviation of the colour from that of wood of this tone, in usual deviations.
    [[nodiscard]] double colour_strangeness(const ColumnLook& look) const;
};

/// The value below which `share` of the values lie.
[[nodiscard]] double quantile(std::vector<double> values, double share);

} // namespace pithward::boundary
