#pragma once

#include "libcore/measure/age.h"

#include <CLI/CLI.hpp>

#include <optional>
#include <vector>

namespace pithward::batch {

/// What `--to-height YEARS[,SD]` was given, as parsed.
using HeightOption = std::vector<double>;

/// Adds that option to a command.
void add_height_option(CLI::App& parser, HeightOption& option);

[[nodiscard]] std::optional<HeightAllowance> allowance_of(const HeightOption& option);

} // namespace pithward::batch
