#include "tests/record/recording_disk.h"

#include <gtest/gtest.h>
#include <sqlite3.h>

#include <cstring>
#include <filesystem>

namespace pithward::test {

namespace {

using EventKind = DiskEvent::Kind;

// SQLite calls plain functions, so what they share stands here.
std::string project_path;
std::vector<DiskEvent> noted;
sqlite3_vfs* vfs_below = nullptr;
sqlite3_vfs recording{};
sqlite3_io_methods methods{};
sqlite3_syscall_ptr open_folder_below = nullptr;

/// SQLite makes room for this and, right behind it, for the file of the system's VFS.
struct OpenFile {
    sqlite3_file base;
    const char* ending; ///< Of its name; null where it is no file of the project.
};

/// What a name has beyond the project's; null where it is another's.
const char* ending_of(const char* name) {
    for (const char* ending : {"", "-wal", "-journal"}) {
        if (name != nullptr && project_path + ending == name) {
            return ending;
        }
    }
    return nullptr;
}

sqlite3_file* inner(sqlite3_file* file) {
    return reinterpret_cast<sqlite3_file*>(reinterpret_cast<OpenFile*>(file) + 1);
}

void note(sqlite3_file* file, EventKind kind, std::int64_t at = 0, std::string bytes = {}) {
    if (const char* ending = reinterpret_cast<OpenFile*>(file)->ending; ending != nullptr) {
        noted.push_back({kind, ending, at, std::move(bytes)});
    }
}

int close_file(sqlite3_file* file) {
    return inner(file)->pMethods->xClose(inner(file));
}
int read_file(sqlite3_file* file, void* bytes, int count, sqlite3_int64 at) {
    return inner(file)->pMethods->xRead(inner(file), bytes, count, at);
}
int write_file(sqlite3_file* file, const void* bytes, int count, sqlite3_int64 at) {
    note(file, EventKind::Write, at, std::string(static_cast<const char*>(bytes), static_cast<std::size_t>(count)));
    return inner(file)->pMethods->xWrite(inner(file), bytes, count, at);
}
int truncate_file(sqlite3_file* file, sqlite3_int64 size) {
    note(file, EventKind::Truncate, size);
    return inner(file)->pMethods->xTruncate(inner(file), size);
}
int sync_file(sqlite3_file* file, int flags) {
    note(file, EventKind::Sync);
    return inner(file)->pMethods->xSync(inner(file), flags);
}
int size_of_file(sqlite3_file* file, sqlite3_int64* size) {
    return inner(file)->pMethods->xFileSize(inner(file), size);
}
int lock_file(sqlite3_file* file, int level) {
    return inner(file)->pMethods->xLock(inner(file), level);
}
int unlock_file(sqlite3_file* file, int level) {
    return inner(file)->pMethods->xUnlock(inner(file), level);
}
int is_reserved(sqlite3_file* file, int* reserved) {
    return inner(file)->pMethods->xCheckReservedLock(inner(file), reserved);
}
int control_file(sqlite3_file* file, int code, void* argument) {
    return inner(file)->pMethods->xFileControl(inner(file), code, argument);
}
int sector_size(sqlite3_file* file) {
    return inner(file)->pMethods->xSectorSize(inner(file));
}
int characteristics(sqlite3_file* file) {
    return inner(file)->pMethods->xDeviceCharacteristics(inner(file));
}
int map_memory(sqlite3_file* file, int page, int size, int extend, void volatile** memory) {
    return inner(file)->pMethods->xShmMap(inner(file), page, size, extend, memory);
}
int lock_memory(sqlite3_file* file, int at, int count, int flags) {
    return inner(file)->pMethods->xShmLock(inner(file), at, count, flags);
}
void order_memory(sqlite3_file* file) {
    inner(file)->pMethods->xShmBarrier(inner(file));
}
int unmap_memory(sqlite3_file* file, int remove) {
    return inner(file)->pMethods->xShmUnmap(inner(file), remove);
}

int open_file(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* flags_out) {
    auto* opened = reinterpret_cast<OpenFile*>(file);
    opened->base.pMethods = nullptr;
    opened->ending = ending_of(name);
    bool there = true;
    if (opened->ending != nullptr) {
        there = std::filesystem::exists(name); // the VFS takes an empty one for none
    }
    std::memset(inner(file), 0, static_cast<std::size_t>(vfs_below->szOsFile));
    const int answer = vfs_below->xOpen(vfs_below, name, inner(file), flags, flags_out);
    if (inner(file)->pMethods != nullptr) {
        opened->base.pMethods = &methods;
    }
    if (answer == SQLITE_OK && !there) {
        note(file, EventKind::Create);
    }
    return answer;
}
int delete_file(sqlite3_vfs*, const char* name, int sync_folder) {
    if (const char* ending = ending_of(name); ending != nullptr) {
        noted.push_back({EventKind::Delete, ending});
    }
    return vfs_below->xDelete(vfs_below, name, sync_folder); // which opens the folder where it is to be synced
}
int access_file(sqlite3_vfs*, const char* name, int flags, int* answer) {
    return vfs_below->xAccess(vfs_below, name, flags, answer);
}
int full_path(sqlite3_vfs*, const char* name, int size, char* path) {
    return vfs_below->xFullPathname(vfs_below, name, size, path);
}
int random_bytes(sqlite3_vfs*, int count, char* bytes) {
    return vfs_below->xRandomness(vfs_below, count, bytes);
}
int wait_us(sqlite3_vfs*, int us) {
    return vfs_below->xSleep(vfs_below, us);
}
int time_now(sqlite3_vfs*, double* day) {
    return vfs_below->xCurrentTime(vfs_below, day);
}
int time_now_ms(sqlite3_vfs*, sqlite3_int64* ms) {
    return vfs_below->xCurrentTimeInt64(vfs_below, ms);
}
int last_error(sqlite3_vfs*, int size, char* text) {
    return vfs_below->xGetLastError(vfs_below, size, text);
}

/// SQLite opens a folder for one thing, to sync it.
int open_folder(const char* file, int* number) {
    if (ending_of(file) != nullptr) {
        noted.push_back({EventKind::SyncFolder, {}});
    }
    return reinterpret_cast<int (*)(const char*, int*)>(open_folder_below)(file, number);
}

} // namespace

RecordingDisk::RecordingDisk(const std::string& project, bool shared_memory) {
    project_path = project;
    noted.clear();
    vfs_below = sqlite3_vfs_find(nullptr);
    methods = {};
    methods.iVersion = shared_memory ? 2 : 1; // not 3: what is written to mapped memory would pass by
    methods.xClose = close_file;
    methods.xRead = read_file;
    methods.xWrite = write_file;
    methods.xTruncate = truncate_file;
    methods.xSync = sync_file;
    methods.xFileSize = size_of_file;
    methods.xLock = lock_file;
    methods.xUnlock = unlock_file;
    methods.xCheckReservedLock = is_reserved;
    methods.xFileControl = control_file;
    methods.xSectorSize = sector_size;
    methods.xDeviceCharacteristics = characteristics;
    methods.xShmMap = map_memory;
    methods.xShmLock = lock_memory;
    methods.xShmBarrier = order_memory;
    methods.xShmUnmap = unmap_memory;
    recording = {};
    recording.iVersion = 2;
    recording.szOsFile = static_cast<int>(sizeof(OpenFile)) + vfs_below->szOsFile;
    recording.mxPathname = vfs_below->mxPathname;
    recording.zName = "recording";
    recording.xOpen = open_file;
    recording.xDelete = delete_file;
    recording.xAccess = access_file;
    recording.xFullPathname = full_path;
    recording.xRandomness = random_bytes;
    recording.xSleep = wait_us;
    recording.xCurrentTime = time_now;
    recording.xCurrentTimeInt64 = time_now_ms;
    recording.xGetLastError = last_error;
    open_folder_below = vfs_below->xGetSystemCall(vfs_below, "openDirectory");
    EXPECT_EQ(vfs_below->xSetSystemCall(vfs_below, "openDirectory", reinterpret_cast<sqlite3_syscall_ptr>(open_folder)),
              SQLITE_OK);
    EXPECT_EQ(sqlite3_vfs_register(&recording, 1), SQLITE_OK);
}

RecordingDisk::~RecordingDisk() {
    sqlite3_vfs_unregister(&recording);
    vfs_below->xSetSystemCall(vfs_below, "openDirectory", nullptr); // the system's own again
    sqlite3_vfs_register(vfs_below, 1);
}

const std::vector<DiskEvent>& RecordingDisk::events() {
    return noted;
}

} // namespace pithward::test
