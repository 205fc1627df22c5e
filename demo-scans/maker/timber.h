#pragma once

#include "demo-scans/maker/colour.h"
#include "demo-scans/maker/scene.h"

namespace pithward::demo {

/// Colours and anatomy of a kind of wood, as it looks sanded and scanned. Sizes in mm. The figures are of the usual
/// size for such woods, from memory, chosen by eye.
struct TimberLook {
    Colour early;                 ///< The palest tissue.
    Colour middle;                ///< Half-dense tissue.
    Colour late;                  ///< The densest tissue.
    Colour heartwood;             ///< Factor on the colour; 1, 1, 1 where heartwood looks like sapwood.
    double latewood_mm = 0.12;    ///< Latewood of a ring: this much ...
    double latewood_share = 0.15; ///< ... plus this share of its width.
    double gradual = 0.3;         ///< Length of the change from early- to latewood as a share of the ring.
    double darkness = 0.85;       ///< Mean density of the latewood, 0 to 1.
    double darkness_sd = 0.12;
    double canals_per_mm = 0.0; ///< Resin canals on a millimetre of ring.
    double file_mm = 0.034;     ///< Breadth of a file of cells.
    double rays_per_mm = 4.0;
    double ray_mm = 0.018;  ///< Breadth of a common ray.
    double ray_tone = 0.05; ///< Relative lightness of rays; negative: darker.
    double broad_rays_per_mm = 0.0;
    double broad_ray_mm = 0.25;
    double vessel_mm = 0.0;       ///< Diameter of the first row of vessels (ring-porous) or of all (diffuse-porous).
    double vessel_rows = 0.0;     ///< Rows of large vessels in a ring of 1.5 mm.
    double vessels_per_mm2 = 0.0; ///< Small vessels.
    double terminal_mm = 0.0;     ///< Breadth of the terminal line.
};

[[nodiscard]] const TimberLook& look_of(Timber timber);

} // namespace pithward::demo
