#pragma once

#include "libcore/specimen/reading.h"

#include <string>

namespace pithward::field {

/// What the field sheet and the core together tell that somebody should look at.
struct Remark {
    enum class End { Bark, Inner };

    std::string reason;
    std::string proposal;
    double probability = 0.5; ///< That the proposal is right.
    End end = End::Bark;      ///< Where on the core it is shown.
    friend bool operator==(const Remark&, const Remark&) = default;
};

/// A remark as a finding of a reading, without a number. At the bark end it is about the outermost boundary, at the
/// inner end about the innermost; the reading has a path.
[[nodiscard]] Finding finding_of(const Reading& reading, const Remark& remark);

} // namespace pithward::field
