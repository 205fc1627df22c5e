#pragma once

#include "libcore/specimen/outcome.h"

#include <CLI/CLI.hpp>

#include <functional>
#include <span>
#include <string>

namespace pithward::batch {

/// Exit status of the program (design, section 5).
enum class Exit { Done = 0, NeedsPerson = 1, Unusable = 2 };

/// Options that every command knows.
struct CommonOptions {
    bool strict = false; ///< Findings that need a person give exit status 1.
    bool force = false;  ///< Files may be written over.
    bool quiet = false;  ///< No progress and no log on standard error.
    int threads = 0;     ///< 0: as many as there are cores.
};

/// A command without a window. A new one is one file and one line in the list of commands.cpp.
struct Command {
    const char* name;
    const char* summary;
    /// Adds the command's own options to its parser and answers with what runs it once they are parsed.
    std::function<std::function<Exit()>(CLI::App& parser, const CommonOptions& common)> attach;
};

/// All commands, in the order of the help text.
[[nodiscard]] std::span<const Command> commands();

/// Makes a parser refuse an option that was given an empty value, which is a mistake in a script.
void refuse_empty_values(CLI::App& parser);

/// Prints a fault that the work goes on after as one line on standard error. `--quiet` does not silence it.
void warn(const Fault& fault);

/// Prints a fault as one line on standard error and answers with the exit status for it.
Exit report(const Fault& fault);

} // namespace pithward::batch
