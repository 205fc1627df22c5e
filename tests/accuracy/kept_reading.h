#pragma once

#include "libcore/specimen/reading.h"

#include <filesystem>
#include <optional>

namespace pithward::accuracy {

/// A reading as it was kept, exactly; nothing where there is no such file or it can't be read.
[[nodiscard]] std::optional<Reading> kept_reading(const std::filesystem::path& file);

/// Keeps a reading, so that an estimate can be tabled anew without the scan; false where it could not be.
bool keep_reading(const std::filesystem::path& file, Reading reading);

} // namespace pithward::accuracy
