#pragma once

#include "tests/record/recording_disk.h"

#include <map>
#include <random>
#include <span>
#include <string>

namespace pithward::test {

/// What a power cut leaves of what was written and not synced.
enum class Unsynced {
    Lost,   ///< Nothing.
    Kept,   ///< All.
    Prefix, ///< What came first.
    Some,   ///< Any of the writes, others not.
    Torn,   ///< Any sectors of 512 bytes of any of the writes; of a file that grew, the rest are zeros or noise.
};

/// Files by what their names have beyond the project's ("", "-wal", "-journal"), with their bytes.
using Files = std::map<std::string, std::string>;

/// The files after a power cut, when `before` was all on the disk and then `events` happened. What was synced is
/// there. Files that were created or deleted and whose folder was not synced since may be there or not. A disk that
/// lies takes no sync for one.
[[nodiscard]] Files after_power_cut(const Files& before, std::span<const DiskEvent> events, Unsynced unsynced,
                                    std::mt19937& random, bool disk_lies = false);

} // namespace pithward::test
