#pragma once

#include "libcore/specimen/boundary.h"
#include "libcore/specimen/break.h"
#include "libcore/specimen/calibration.h"
#include "libcore/specimen/finding.h"
#include "libcore/specimen/path.h"
#include "libcore/specimen/pith.h"
#include "libcore/specimen/wood.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace pithward {

/// How it is known which end of the path is bark.
struct BarkEnd {
    std::string how = "given"; ///< "given", "bark", "polarity", "curvature".
    double probability = 1.0;
    friend bool operator==(const BarkEnd&, const BarkEnd&) = default;
};

/// One analyst's path, boundaries and breaks on one core. Changed by edits only (libcore/edit).
struct Reading {
    enum class State { Proposed, Marked, Passed, Returned };

    ReadingId id;
    std::string core;    ///< Identifier of the core; may be empty outside a project.
    std::string analyst; ///< Empty while only the program has worked on it.
    State state = State::Proposed;

    WoodType wood = WoodType::Conifer;
    OuterWood outer = OuterWood::Unknown;
    std::optional<Year> last_year; ///< Year of the outermost ring with a width, when known.
    Path path;
    BarkEnd bark_end;
    std::map<std::string, Calibration> calibrations; ///< By the scan name of the legs.

    std::vector<Boundary> boundaries;  ///< In path order, from bark to pith.
    std::vector<Candidate> not_annual; ///< Candidates turned down, in path order.
    std::vector<Break> breaks;         ///< In path order.
    std::vector<AbsentRing> absent_rings;
    std::vector<Finding> findings;
    std::optional<ImagePoint> wood_edge; ///< Where the wood ends under the bark, on the first leg.
    std::optional<Pith> pith;
    std::string note;

    friend bool operator==(const Reading&, const Reading&) = default;
};

/// "proposed", "marked", "passed", "returned".
[[nodiscard]] std::string word(Reading::State state);

} // namespace pithward
