#pragma once

#include "libcore/formats/reading_json.h"
#include "libcore/formats/study_notes.h"
#include "libcore/record/project.h"
#include "libcore/review/standing.h"

#include <vector>

namespace pithward::batch {

/// The readings that stand for their cores, measured, with what was said of each.
struct AcceptedReadings {
    std::vector<MeasuredReading> readings; ///< `core` is the core's name, with its site's where two sites have it.
    std::vector<review::Standing> standings;
    std::vector<Fault> left_out; ///< Cores whose reading can't be measured.
    int cores_without = 0;       ///< Cores of the project that have no reading.
    int not_passed = 0;          ///< Cores left out since their reading is not passed.
    StudyNotes notes;            ///< Of the sites, trees and cores of `readings`.
    std::vector<Site> sites;     ///< The field sheet of `readings`.
};

/// In the order of the field sheet. With `only_passed` no reading that nobody has passed is taken.
/// `allowance`: for growing up to the height of the cores, where the field sheet has none of its own.
[[nodiscard]] Outcome<AcceptedReadings> accepted_readings(const record::Project& project, bool only_passed,
                                                          const std::optional<HeightAllowance>& allowance = {});

} // namespace pithward::batch
