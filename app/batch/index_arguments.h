#pragma once

#include "libcore/dating/index_series.h"
#include "libcore/specimen/outcome.h"

#include <CLI/CLI.hpp>

#include <string>

namespace pithward::batch {

/// How a command was told to detrend, as words.
struct IndexArguments {
    std::string detrend;
    std::string prewhiten;
    std::string index = "ratio";
    bool logarithm = false;
};

/// Adds the options to a parser. The words that stand in `arguments` are their defaults.
void add_index_arguments(CLI::App& parser, IndexArguments& arguments);

/// The same understood. Fails on a kind that there isn't, and on a period that makes no sense.
[[nodiscard]] Outcome<dating::IndexOptions> index_options(const IndexArguments& arguments);

} // namespace pithward::batch
