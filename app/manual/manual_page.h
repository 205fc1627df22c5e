#pragma once

#include "app/batch/command_line.h"

#include <string>

namespace pithward::manual {

/// The manual page of the program, as the section 1 of a system's manual has it (man(7)), made from the command line
/// that the program itself parses: it can't tell of what is not there.
[[nodiscard]] std::string manual_page(const batch::CommandLine& line, const std::string& version);

/// The commands and options of the program for the completion of bash.
[[nodiscard]] std::string bash_completion(const batch::CommandLine& line);

} // namespace pithward::manual
