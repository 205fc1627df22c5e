#pragma once

#include "libcore/specimen/ids.h"
#include "libcore/specimen/units.h"

#include <cstddef>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace pithward {

/// What informs about a boundary without asking for an answer. What asks for one is a Finding.
enum class Flag { Faint, VeryNarrow, Wedging, Steep, WidthOutlier, NearBreak };

/// What the program proposes as a ring boundary.
struct Candidate {
    CandidateId id;
    std::size_t leg = 0;     ///< Index into the path's legs.
    ImagePoint at;           ///< Where the boundary crosses the path.
    double tangent = 0.0;    ///< Direction of the boundary in the image, radians in [0, pi), x axis toward y axis.
    Millimetres sd;          ///< Standard deviation of the position along the path.
    double confidence = 0.0; ///< Probability that it is an annual boundary.
    std::set<Flag> flags;
    std::string reason;                  ///< Why it is not taken as annual, in words; empty on one that is.
    std::vector<ImagePoint> curve;       ///< The boundary traced across the strip; may be empty.
    std::optional<Millimetres> latewood; ///< Breadth of the latewood that ends here, square to the boundary.
    friend bool operator==(const Candidate&, const Candidate&) = default;
};

enum class Origin { Program, Analyst };
enum class Confirmation { None, LookedAt, InBulk };

/// Where a year's growth ended: its outer edge, as a reading holds it.
struct Boundary {
    BoundaryId id;
    std::size_t leg = 0;
    ImagePoint at;
    double tangent = 0.0;
    Millimetres sd;
    bool sd_assumed = false; ///< True where `sd` is the assumed value for want of a refit or repeat readings.
    double confidence = 1.0;
    std::set<Flag> flags;
    Origin origin = Origin::Program;
    Confirmation confirmation = Confirmation::None;
    std::vector<ImagePoint> curve;
    std::optional<Millimetres> latewood;
    std::string note;
    friend bool operator==(const Boundary&, const Boundary&) = default;
};

/// Deviation of an analyst's boundary for want of anything better (design, section 4; assumed).
inline constexpr Millimetres assumed_boundary_sd{0.02};

/// A year of which the tree laid nothing on this path. It lies at a boundary, just outside the ring which that one
/// closes.
struct AbsentRing {
    AbsentRingId id;
    BoundaryId at;
    Origin origin = Origin::Analyst;
    std::string note;
    friend bool operator==(const AbsentRing&, const AbsentRing&) = default;
};

/// A boundary from a candidate, marked as the program's and confirmed by nobody.
[[nodiscard]] Boundary boundary_from(const Candidate& candidate, BoundaryId id);

/// The word for a flag: "faint", "very-narrow", "wedging", "steep", "width-outlier", "near-break".
[[nodiscard]] std::string word(Flag flag);
[[nodiscard]] std::optional<Flag> flag_from(std::string_view word);
[[nodiscard]] std::string word(Origin origin);
[[nodiscard]] std::string word(Confirmation confirmation);

} // namespace pithward
