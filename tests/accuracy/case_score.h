#pragma once

#include "demo-scans/maker/truth.h"
#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"

#include <string>
#include <vector>

namespace pithward::accuracy {

/// A boundary proposed where there is none, or a true one overlooked.
struct Mistake {
    enum class Kind { False, Overlooked };
    Kind kind = Kind::False;
    ImagePoint at;
    bool escaped = false; ///< Neither a finding nor an unsure boundary up to the true boundaries beside it.
};

/// What a candidate was said to be, and whether it is.
struct Chance {
    double confidence = 0.0;
    bool annual = false;
};

/// A reading of one core against the truth.
struct CaseScore {
    std::string name;
    int proposed = 0; ///< Boundaries proposed on the path.
    int found = 0;    ///< True boundaries that one of them shows.
    std::vector<Mistake> mistakes;
    int places = 0;                 ///< That a reviewer is asked to look at.
    std::vector<double> errors_px;  ///< Of boundaries found, positive toward the pith.
    std::vector<double> position_z; ///< The same as a share of each boundary's stated deviation.
    std::vector<double> width_z; ///< Errors of widths as a share of theirs, where both boundaries of a ring are found.
    std::vector<Chance> chances; ///< Of boundaries that are right or wrong, and of candidates turned down.

    [[nodiscard]] int count(Mistake::Kind kind) const;
    [[nodiscard]] int escaped() const;
    /// True boundaries that count.
    [[nodiscard]] int rings() const { return found + count(Mistake::Kind::Overlooked); }
};

/// `series` is what `measure` made of the reading. A proposed boundary with no true one in reach is wrong, unless it is
/// at a neutral place (placed_truth.h). The path of the reading should be the true one.
[[nodiscard]] CaseScore case_score(const demo::Truth& truth, const Reading& reading, const RingSeries& series);

/// The score of a core that could not be read: all its boundaries are overlooked, and nobody is told where.
[[nodiscard]] CaseScore unread(const demo::Truth& truth);

} // namespace pithward::accuracy
