#pragma once

#include "app/report/paper/document.h"
#include "app/report/site/site_record.h"

#include <vector>

namespace pithward::report {

// The chapters of a site's report, in their order. Each adds its blocks.

void add_summary(std::vector<Block>& blocks, const SiteRecord& record);
void add_samples(std::vector<Block>& blocks, const SiteRecord& record);
void add_methods(std::vector<Block>& blocks, const SiteRecord& record);
void add_dating(std::vector<Block>& blocks, const SiteRecord& record);
void add_ages(std::vector<Block>& blocks, const SiteRecord& record);
void add_growth(std::vector<Block>& blocks, const SiteRecord& record);
void add_climate(std::vector<Block>& blocks, const SiteRecord& record);
void add_cores(std::vector<Block>& blocks, const SiteRecord& record);
void add_limits(std::vector<Block>& blocks);
void add_sources(std::vector<Block>& blocks);

} // namespace pithward::report
