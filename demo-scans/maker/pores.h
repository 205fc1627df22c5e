#pragma once

#include "demo-scans/maker/colour.h"
#include "demo-scans/maker/placement.h"

#include <cstdint>
#include <vector>

namespace pithward::demo {

/// A round or oval opening in the cross-section: a vessel or a resin canal. Sizes in mm.
struct Pore {
    CorePoint at;
    double half_a = 0.05;
    double half_b = 0.05;
    Colour colour;
    double opacity = 1.0;
    double soft_mm = 0.0; ///< Extra softness of the rim.
};

/// All pores of a core, found quickly by place.
class Pores {
public:
    Pores() = default;
    /// Keeps those within `half_width` of the centre line.
    Pores(std::vector<Pore> pores, double half_width);

    /// The tissue's colour with the pores over it. `pixel_mm` sets the softness of rims.
    [[nodiscard]] Colour over(Colour tissue, CorePoint at, double pixel_mm) const;
    [[nodiscard]] bool empty() const { return pores_.empty(); }

private:
    [[nodiscard]] std::ptrdiff_t cell(double a, double b) const;

    std::vector<Pore> pores_;
    std::vector<std::uint32_t> first_; ///< Where each cell's list starts.
    std::vector<std::uint32_t> list_;
    double a_low_ = 0.0;
    double b_low_ = 0.0;
    std::ptrdiff_t columns_ = 0;
    std::ptrdiff_t rows_ = 0;
};

/// The resin canals or vessels of a core of that scene.
[[nodiscard]] std::vector<Pore> grow_pores(const Scene& scene, const std::vector<PlannedRing>& plan,
                                           const RingField& field);

} // namespace pithward::demo
