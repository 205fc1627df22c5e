#pragma once

#include "app/batch/command.h"
#include "app/batch/measure_options.h"

#include <algorithm>

namespace pithward::batch {

/// The task of `measure` with these words on its command line.
inline Outcome<MeasureTask> task_from(std::vector<std::string> words) {
    CLI::App parser;
    MeasureOptions options;
    add_options(parser, options);
    refuse_empty_values(parser);
    std::ranges::reverse(words); // as CLI11 takes them
    try {
        parser.parse(words);
    } catch (const CLI::ParseError& error) {
        return fail("", error.what(), "see --help");
    }
    return task_of(options);
}

} // namespace pithward::batch
