#pragma once

#include "libcore/specimen/units.h"

#include <opencv2/core.hpp>

#include <cstdint>
#include <vector>

namespace pithward::test {

/// A ruler as a scanner sees it. Lengths in millimetres.
struct RulerLook {
    double px_per_mm_x = 47.244;
    double px_per_mm_y = 47.244;
    double tilt_deg = 0.0; ///< From +x towards +y; 90 lays it along y.

    double spacing_mm = 1.0;
    std::vector<int> longer_each = {5, 10};           ///< Numbers of the marks that are longer.
    std::vector<double> lengths_mm = {2.4, 3.4, 4.6}; ///< Of the shortest, then of the longer ones.
    int first_number = 0;                             ///< Of the first mark that lies on the scan.
    int marks = 60;
    double stroke_mm = 0.12;
    double placing_mm = 0.0; ///< Standard deviation of a mark's place.
    double missing = 0.0;    ///< Share of the marks that are worn off ...
    double worn = 0.0;       ///< ... or pale and cut short ...
    double doubled = 0.0;    ///< ... or have a second stroke beside them.
    bool numerals = true;    ///< At the longest marks.

    double base = 200.0;  ///< Grey of the ruler ...
    double ink = 50.0;    ///< ... and of its marks.
    double brushed = 0.0; ///< Streaks along the ruler, in grey levels.
    double blur_px = 0.8;
    double noise = 1.5;        ///< Standard deviation in grey levels.
    double uneven_light = 0.0; ///< Share of the light lost toward one corner.
    double wander_px = 0.0;    ///< How far the scan stretches and shrinks along the ruler, smoothly.
    std::uint64_t seed = 1;
};

/// Its picture, and the places that a person would point at.
struct RenderedRuler {
    cv::Mat pixels;  ///< CV_8UC3.
    ImagePoint from; ///< Half way along the shortest marks, at the first mark ...
    ImagePoint to;   ///< ... and at the last.
};

[[nodiscard]] RenderedRuler rendered_ruler(const RulerLook& look);

} // namespace pithward::test
