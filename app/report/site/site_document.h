#pragma once

#include "app/report/paper/document.h"
#include "app/report/site/site_record.h"

namespace pithward::report {

/// The report of a project: site and samples, methods and settings, results, each core, limits, sources. Finished.
/// Needs no display and no application.
[[nodiscard]] Document site_document(const SiteRecord& record);

} // namespace pithward::report
