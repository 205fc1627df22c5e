#pragma once

#include "libcore/specimen/units.h"
#include "libcore/specimen/wood.h"

#include <nlohmann/json_fwd.hpp>

#include <optional>
#include <string>
#include <vector>

namespace pithward::demo {

/// The outer edge of a year's ring on the path, where the change from latewood to earlywood is half done.
struct TrueBoundary {
    ImagePoint at;
    Year year;
    double angle_deg = 0.0; ///< Tangent, from +x toward +y, in [0, 180).
    bool visible = true;
    std::string why_invisible; ///< "absent", "too_thin", "chunk" or "gap"; empty on a visible one.
    bool at_bark = false;
};

/// A ring's width on the path. `radial_mm` is the mean of the two shortest distances between its boundaries: from the
/// outer crossing to the inner curve, and from the inner crossing to the outer curve.
struct TrueWidth {
    Year year;
    std::optional<double> radial_mm;     ///< Nothing where lost wood touches the ring.
    std::optional<double> along_path_mm; ///< Less the gaps of cracks.
};

struct TrueFalseRing {
    ImagePoint at;
    Year year;
    double phase = 0.0;
    double strength = 0.0;
};

struct TruePith {
    ImagePoint at;            ///< May lie outside the picture.
    bool inside = false;      ///< On the core.
    double distance_mm = 0.0; ///< From the path's innermost point.
    int missing_rings = 0;    ///< Rings inside the innermost boundary of the path, the one that it closes included.
};

/// Something done to the wood or the scan; positions in pixels.
struct TrueDisturbance {
    std::string type;
    double strength = 0.0;
    std::vector<std::pair<std::string, double>> numbers;
};

/// What is really there, for one core of a scan.
struct Truth {
    std::string name;
    std::string timber;
    WoodType wood = WoodType::Conifer;
    double dpi = 0.0;
    int width_px = 0;
    int height_px = 0;
    std::vector<ImagePoint> path; ///< From just outside the outermost boundary to a little before the inner end.
    bool bark_left = true;
    Year last_complete_ring_year;         ///< Year of the first boundary's ring.
    std::vector<TrueBoundary> boundaries; ///< In path order.
    std::vector<TrueWidth> widths;        ///< In path order, one fewer; with the pith on the core, as many.
    std::optional<ImagePoint> bark_edge;  ///< Outer edge of an unfinished ring.
    std::vector<TrueFalseRing> false_rings;
    TruePith pith;
    std::vector<TrueDisturbance> disturbances;
};

/// The truth as JSON, in the shape that demo-scans/README.md tells of.
[[nodiscard]] nlohmann::json truth_json(const Truth& truth);

} // namespace pithward::demo
