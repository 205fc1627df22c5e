#pragma once

#include "app/report/site/site_record.h"
#include "libcore/measure/age.h"
#include "libcore/record/project.h"

#include <functional>

namespace pithward::batch {

/// Gathers what a report tells of a project: its accepted readings measured, their histories, pictures of their scans,
/// the series of each site and species held against each other and averaged. A core without a reading, a reading that
/// can't be measured and a scan that isn't there are told in the record; it fails where the project can't be read.
/// `allowance`: for growing up to the height of the cores, where the field sheet has none of its own. `seen` is told
/// the name of each core that is done.
[[nodiscard]] Outcome<report::SiteRecord> site_record(const record::Project& project,
                                                      const std::optional<HeightAllowance>& allowance,
                                                      const std::function<void(const std::string&)>& seen = {});

/// The chronology's values by year.
[[nodiscard]] dating::YearSeries values_of(const dating::Chronology& made);

/// Holds each group's chronology against a climate series, by the hemisphere of the first core that has a latitude;
/// north without one.
void add_climate(report::SiteRecord& record, const results::MonthlyClimate& climate, std::string file);

/// The series of each site and species, where there are two trees or more, crossdated and averaged.
[[nodiscard]] std::vector<report::DatedGroup> dated_groups(const std::vector<report::CoreRecord>& cores,
                                                           const dating::CrossdateOptions& crossdating,
                                                           const dating::IndexOptions& averaging);

} // namespace pithward::batch
