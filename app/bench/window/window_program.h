#pragma once

#include <string>
#include <vector>

namespace pithward::bench {

/// Opens the main window on the given scans (none: an empty bench) and runs until it is closed. Answers with the exit
/// status.
int run_window(int argc, char** argv, const std::vector<std::string>& files);

} // namespace pithward::bench
