#pragma once

#include "libcore/specimen/outcome.h"

#include <span>
#include <string>
#include <vector>

namespace pithward::batch {

/// A place that a command was told to write to.
struct OutputFile {
    std::string option;  ///< That names it, for faults.
    std::string file;    ///< Empty: not asked for. `-`: standard output.
    bool streams = true; ///< May go to standard output.
};

/// Told before the work, not after it: fails on a file that is there and may not be written over, on a folder that is
/// missing or can't be written to, on two outputs in one place, and on an output that would replace an input.
[[nodiscard]] Outcome<void> check_outputs(std::span<const OutputFile> outputs, std::span<const std::string> inputs,
                                          bool force);

/// What goes to an output once it is complete.
struct OutputBytes {
    std::string file;
    std::string bytes;
};

/// Writes each whole or not at all, to a file or to standard output.
[[nodiscard]] Outcome<void> write_outputs(std::span<const OutputBytes> outputs, bool force);

} // namespace pithward::batch
