#pragma once

#include "libcore/specimen/outcome.h"

#include <filesystem>
#include <functional>
#include <ostream>

namespace pithward {

/// Writes a file whole or not at all: into a new file beside it, which takes its name once it is complete and on the
/// disk. An existing file is not touched without `force`, and with it stays as it was if `writer` fails. A symbolic
/// link is followed. Faults name the file.
[[nodiscard]] Outcome<void> write_whole_file(const std::filesystem::path& path, bool force,
                                             const std::function<Outcome<void>(std::ostream&)>& writer);

/// The same for what is written by its name: `maker` fills the new file, which is empty, by the path that it is given.
[[nodiscard]] Outcome<void> make_whole_file(const std::filesystem::path& path, bool force,
                                            const std::function<Outcome<void>(const std::filesystem::path&)>& maker);

/// Whether a file could be written so, as far as can be told beforehand: told before long work, not after it.
[[nodiscard]] Outcome<void> check_whole_file(const std::filesystem::path& path, bool force);

} // namespace pithward
