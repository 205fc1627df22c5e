#pragma once

#include "libcore/specimen/units.h"

#include <cstddef>
#include <string>
#include <vector>

namespace pithward::boundary {

/// What was seen at a place that may be a ring boundary. Lengths in mm; tones are natural logarithms of brightness.
struct Signs {
    double fall = 0.0;          ///< How much darker the wood gets, going from bark to pith.
    double relative_fall = 0.0; ///< `fall` against the usual fall of the strong marks nearby.
    double edge_mm = 0.0;       ///< Breadth of the change: fall over steepest gradient.
    double relative_edge = 0.0; ///< `edge_mm` against the usual one of the strong marks.
    double before = 0.0;        ///< Mean level just before the change, against the local mean, in usual falls ...
    double after = 0.0;         ///< ... and just after it.
    double recovery = 0.0;      ///< Rise of tone further inward, up to the next mark, against `fall`.
    double lopsidedness = 0.0;  ///< ln of the steepest fall over the steepest rise that follows, cut at +-3.
    double support = 0.0;       ///< Share of the core's breadth on which the change is seen.
    double support_left = 0.0;  ///< The same on the side of negative u ...
    double support_right = 0.0; ///< ... and of positive u.
};

/// One point of a traced boundary, on the strip.
struct TracePoint {
    double s_mm = 0.0;
    double u_mm = 0.0;
};

/// A place on the path that may be a ring boundary.
struct Mark {
    double column = 0.0; ///< Where it crosses the path, in columns of the strip.
    Signs signs;
    double log_odds = 0.0; ///< Of being annual, from the signs alone.
    double sd_mm = 0.01;   ///< Standard deviation of its place along the path.
    double slope = 0.0;    ///< Movement along the path for each mm across, at the path.
    std::vector<TracePoint> trace;
    double latewood_mm = 0.0; ///< Breadth of the dark wood inward of it, along the path; 0 where it can't be told.
};

} // namespace pithward::boundary
