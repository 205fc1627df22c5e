#pragma once

#include "libcore/specimen/reading.h"

#include <span>
#include <vector>

namespace pithward::review {

/// A finding that waits for somebody.
struct Waiting {
    ReadingId reading;
    FindingId finding;
    double rings_at_stake = 0.0; ///< Rings expected to be wrong as it stands; see `rings_at_stake`.
    friend bool operator==(const Waiting&, const Waiting&) = default;
};

/// How many rings of a reading are expected to be wrong at a finding as it stands: the probability that it stands
/// wrongly, times the rings that this would touch. Our own measure (docs/methods.md).
///
/// 1. An open finding, one kept as it is and one that can't be told stand wrongly as probably as its proposal is right;
///    one whose proposal was taken, as probably as the proposal is wrong.
/// 2. A ring too many or too few shifts the years of all rings that lie further from the bark, and spoils one width. A
///    doubtful bark end, outer wood or scale touches every ring. What is about the pith or the wood type touches one.
[[nodiscard]] double rings_at_stake(const Reading& reading, const Finding& finding);

/// The findings that wait for the second person, the worst first, over all readings given: those of marked readings
/// that nobody has judged, and of returned ones those that were settled and not judged. Of equal ones that of the
/// earlier reading comes first.
[[nodiscard]] std::vector<Waiting> supervisors_queue(std::span<const Reading> readings);

/// The findings that wait for the analyst: the open ones of proposed and returned readings. Returned ones come first,
/// then the worst.
[[nodiscard]] std::vector<Waiting> analysts_list(std::span<const Reading> readings);

} // namespace pithward::review
