#pragma once

#include "app/batch/accepted_readings.h"
#include "libcore/formats/package_check.h"

#include <string>
#include <vector>

namespace pithward::batch {

/// A core whose reading has no calendar years, and why, as far as the field sheet tells.
struct UndatedCore {
    std::string name;
    std::string reason; ///< "the field sheet does not tell latitude"; all that is missing at once.
    std::string remedy;
};

/// Why a reading has no calendar years.
[[nodiscard]] UndatedCore why_undated(const AcceptedReadings& accepted, const MeasuredReading& one);

/// What a package lacks by such a core.
[[nodiscard]] PackageGap gap_of(const UndatedCore& core);

/// That none of the cores has years, why, and what else of the field sheet the archive will miss: all in one fault, so
/// that the sheet is filled in once.
[[nodiscard]] Fault none_dated(const std::string& project, const std::vector<UndatedCore>& cores,
                               const StudyNotes& notes);

} // namespace pithward::batch
