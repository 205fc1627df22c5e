#pragma once

#include "demo-scans/maker/placement.h"
#include "demo-scans/maker/pores.h"
#include "demo-scans/maker/profile.h"
#include "demo-scans/maker/rings.h"

#include <optional>
#include <vector>

namespace pithward::demo {

/// One core with all that is known of it: its rings, its cells, where it lies on the scan.
struct CoreModel {
    explicit CoreModel(const Scene& scene);
    /// Puts the middle of the core (bark and wood) at a place of the scan.
    void place(ImagePoint middle);

    /// Where a place of the scan is in the wood, by the piece that it lies on.
    struct InWood {
        std::size_t piece = 0;
        CorePoint core;
        TreePoint tree;
        double cover = 0.0; ///< 0 in the gap between pieces or beyond the ends, 1 in wood or bark.
        Vector along;       ///< Unit vectors on the scan: toward the pith along the wood's centre line, and across.
        Vector across;
    };
    [[nodiscard]] InWood in_wood(ImagePoint p) const;
    [[nodiscard]] ImagePoint to_image(const Piece& piece, CorePoint core) const;

    /// How far a place of the core lies inside the missing chunks, in mm; negative outside.
    [[nodiscard]] double in_chunk(CorePoint core) const;

    Scene scene;
    std::vector<PlannedRing> plan;
    RingField field;
    std::vector<RingProfile> rings;
    Pores pores;
    int rings_to_pith = 0;    ///< Index of the innermost boundary on the path; 0 with the pith on the core.
    double a_innermost = 0.0; ///< Where that boundary crosses the centre line.
    double a_end = 0.0;       ///< Inner end of the wood; with a far side its outer end, the bark there included.
    std::vector<Piece> pieces;
    double strip_mm = 0.0; ///< Length of the wood on the strip, gaps included.
    Frame frame;
};

} // namespace pithward::demo
