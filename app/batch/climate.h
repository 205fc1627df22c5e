#pragma once

#include "app/batch/command.h"
#include "libcore/results/monthly_climate.h"
#include "libcore/specimen/outcome.h"

#include <string>

namespace pithward::batch {

/// Reads a climate series; faults name the file.
[[nodiscard]] Outcome<results::MonthlyClimate> climate_of_file(const std::string& file);

std::function<Exit()> attach_climate(CLI::App& parser, const CommonOptions& common);

} // namespace pithward::batch
