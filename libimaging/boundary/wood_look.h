#pragma once

#include "libimaging/boundary/texture.h"

#include <span>
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

/// The line by least squares through a quantity of some columns against their tone; its deviation is twice the median
/// one, which leaves room for stains, and at least as given.
[[nodiscard]] LookLine line_through(std::span<const ColumnLook> looks, double ColumnLook::*value,
                                    double least_deviation);

/// What wood looks like: its colour and roughness for each tone, and the range of its tones.
struct WoodLook {
    LookLine red;
    LookLine blue;
    LookLine rough;
    double darkest = 0.0;
    double lightest = 0.0;

    /// Learnt from columns that are wood. At least 10 of them.
    explicit WoodLook(const std::vector<ColumnLook>& wood);

    /// How much a column speaks for something else than wood: positive for, negative against. Deviations of colour
    /// count up to the limit: with the one given colour alone can't decide, since sapwood and heartwood differ in it
    /// too.
    [[nodiscard]] double evidence_against(const ColumnLook& look, double colour_limit = 2.05) const;

    /// Deviation of the colour from that of wood of this tone, in usual deviations.
    [[nodiscard]] double colour_strangeness(const ColumnLook& look) const;
};

/// The value below which `share` of the values lie.
[[nodiscard]] double quantile(std::vector<double> values, double share);

} // namespace pithward::boundary
