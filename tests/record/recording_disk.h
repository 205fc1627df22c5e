#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace pithward::test {

/// Something that SQLite did to a project's file, its log or its journal.
struct DiskEvent {
    enum class Kind {
        Create,     ///< Of a file that was not there.
        Write,      ///< Of `bytes` at `at`.
        Truncate,   ///< To `at` bytes.
        Sync,       ///< What was written to this file is on the disk.
        Delete,     ///< Of the file.
        SyncFolder, ///< What was created and deleted in the folder is on the disk.
    };
    Kind kind = Kind::Write;
    std::string file; ///< What its name has beyond the project's: "", "-wal", "-journal".
    std::int64_t at = 0;
    std::string bytes = {};
};

/// While it lives, SQLite works through it on the system's own files, and each change of one project's files is
/// noted: a VFS in SQLite's terms (sqlite.org, "The SQLite OS Interface or VFS"). One at a time, on one thread.
class RecordingDisk {
public:
    /// `project` is its whole path. Without shared memory, SQLite can keep no log.
    RecordingDisk(const std::string& project, bool shared_memory);
    ~RecordingDisk();
    RecordingDisk(const RecordingDisk&) = delete;
    RecordingDisk& operator=(const RecordingDisk&) = delete;

    [[nodiscard]] static const std::vector<DiskEvent>& events();
};

} // namespace pithward::test
