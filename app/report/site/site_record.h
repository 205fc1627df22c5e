#pragma once

#include "libcore/dating/chronology.h"
#include "libcore/dating/crossdate.h"
#include "libcore/formats/reading_json.h"
#include "libcore/measure/age.h"
#include "libcore/record/project_values.h"
#include "libcore/results/climate_response.h"
#include "libcore/review/standing.h"

#include <optional>
#include <string>
#include <vector>

namespace pithward::report {

/// A picture of a core's scan, or why there is none.
struct CorePicture {
    std::string scan;   ///< As the project names it.
    std::string jpeg;   ///< Empty where there is none.
    std::string reason; ///< Why not.
};

/// Who worked on a reading: how many edits, from when to when.
struct Worker {
    std::string who;
    int edits = 0;
    std::string first; ///< ISO 8601 in UTC.
    std::string last;
    friend bool operator==(const Worker&, const Worker&) = default;
};

/// A core of a project with all that a report tells of it.
struct CoreRecord {
    record::CoreEntry entry;
    std::string name;                        ///< With its site's where two sites have it.
    std::optional<MeasuredReading> measured; ///< Its accepted reading.
    std::string not_measured;                ///< Why there is none.
    review::Standing standing;
    std::optional<Age> age;
    std::vector<Worker> workers;
    std::vector<CorePicture> pictures;
};

/// A scan, and whether it is still the one that was measured.
struct ScanRecord {
    enum class State { Same, Other, NotFound, Unknown };
    record::ScanEntry entry;
    State state = State::Unknown;
};

/// The cores of one site and species, held against each other and averaged.
struct DatedGroup {
    std::string name;
    std::size_t cores = 0;
    std::optional<double> latitude; ///< Of its site, degrees.
    dating::CrossdateResult crossdated;
    std::optional<dating::Chronology> chronology;
    std::optional<results::ClimateResponse> climate; ///< Where a climate series was given.
    std::string reason;                              ///< Why they were not held against each other; else empty.
};

/// All that a report tells of a project.
struct SiteRecord {
    std::string project;               ///< The file's name.
    std::string climate_file;          ///< Name of the climate series; empty where none was given.
    std::string version;               ///< Of the program that made the report.
    std::string made_at;               ///< ISO 8601 in UTC.
    std::vector<std::string> programs; ///< Versions that worked on the project.
    std::vector<record::Person> people;
    std::vector<CoreRecord> cores;
    std::vector<ScanRecord> scans;
    std::vector<DatedGroup> groups;
    std::vector<std::string> statement; ///< How much was looked at, and by whom.
    dating::CrossdateOptions crossdating;
    dating::IndexOptions chronology;
};

} // namespace pithward::report
