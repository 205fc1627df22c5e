#pragma once

#include "libcore/record/project.h"

#include <QString>
#include <filesystem>
#include <vector>

namespace pithward::bench {

/// What a project holds, at a glance.
struct ProjectOverview {
    std::filesystem::path file;
    std::filesystem::path folder;
    std::vector<record::CoreEntry> cores;
    std::vector<record::ReadingEntry> readings;
    std::vector<record::ScanEntry> scans;
    std::vector<record::Person> people;
    bool can_change = true; ///< Whether the file can be written to.
    std::string remark;     ///< What a person should know of how the file is kept; mostly empty.
};

[[nodiscard]] Outcome<ProjectOverview> read_overview(const record::Project& project);

/// The core and the reading of an id; null when there is none.
[[nodiscard]] const record::CoreEntry* core_of(const ProjectOverview& overview, record::CoreId id);
[[nodiscard]] const record::ReadingEntry* reading_of(const ProjectOverview& overview, ReadingId id);
/// The reading that stands for a core; null where it has none.
[[nodiscard]] const record::ReadingEntry* accepted_of(const ProjectOverview& overview, record::CoreId id);
/// "Sue, supervisor"; the name alone where no role is entered.
[[nodiscard]] QString person_in_words(const ProjectOverview& overview, const std::string& name);
/// "HW01A"; "HW01A, reading 7" where its core has several.
[[nodiscard]] std::string name_of_reading(const ProjectOverview& overview, ReadingId id);

} // namespace pithward::bench
