#pragma once

#include "app/batch/command.h"

#include <CLI/CLI.hpp>

#include <functional>
#include <string>
#include <utility>
#include <vector>

namespace pithward::batch {

/// A parser for the whole command line, and what each command runs.
struct CommandLine {
    CommandLine();
    CommandLine(const CommandLine&) = delete; // the parser writes to it
    CommandLine& operator=(const CommandLine&) = delete;

    CLI::App parser{"Ring-width series from scanned increment cores.", "pithward"};
    CommonOptions common;
    std::vector<std::pair<CLI::App*, std::function<Exit()>>> runs;
    std::vector<std::string> files; ///< To open in the window.
};

} // namespace pithward::batch
