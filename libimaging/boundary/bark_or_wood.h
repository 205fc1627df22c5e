#pragma once

#include "libimaging/boundary/texture.h"
#include "libimaging/boundary/wood_look.h"

#include <optional>
#include <span>

namespace pithward::boundary {

/// Tells bark from the wood next to it.
///
/// Bark can be as dark as latewood, and wood changes its colour from sapwood to heartwood; but at one tone bark and
/// the wood next to it differ in colour. What either looks like (red and blue for each tone, and for bark the tone) is
/// learnt from both sides of an edge that is known roughly.
class BarkOrWood {
public:
    /// Learns from up to 2 mm of bark and 4 mm of wood beside column `edge`; `looks` are of the columns from the
    /// strip's start, `px_mm` apart. Nothing when there is too little on one side.
    [[nodiscard]] static std::optional<BarkOrWood> learnt(std::span<const ColumnLook> looks, int edge, double px_mm);

    /// Logarithm of the likelihood ratio of bark to wood, between -4 and 4.
    [[nodiscard]] double evidence_for_bark(const ColumnLook& look) const;

private:
    /// Colour on a line of the tone.
    struct Material {
        LookLine red;
        LookLine blue;

        explicit Material(std::span<const ColumnLook> looks);
        [[nodiscard]] double log_likelihood(const ColumnLook& look) const;
    };

    BarkOrWood(std::span<const ColumnLook> bark, std::span<const ColumnLook> wood);

    Material bark_;
    Material wood_;
    double bark_tone_;
    double bark_tone_deviation_;
    double wood_tone_range_; ///< Wood is anywhere between its darkest and lightest.
};

} // namespace pithward::boundary
