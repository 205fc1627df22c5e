#include "libcore/formats/whole_file.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <fstream>
#include <random>
#include <string>
#include <system_error>
#include <utility>

namespace pithward {

namespace fs = std::filesystem;

namespace {

/// A new, empty file beside the one to be written; removed again unless it was given its final name.
class NewFile {
public:
    explicit NewFile(const fs::path& target) {
        std::random_device random;
        for (int attempt = 0; attempt < 100; ++attempt) {
            path_ = target;
            path_ += "." + std::to_string(random()) + ".part";
            const int file = ::open(path_.c_str(), O_CREAT | O_EXCL | O_WRONLY | O_CLOEXEC, 0666);
            if (file >= 0) {
                ::close(file);
                made_ = true;
                return;
            }
            if (errno != EEXIST) {
                return;
            }
        }
    }
    NewFile(const NewFile&) = delete;
    NewFile& operator=(const NewFile&) = delete;
    ~NewFile() {
        if (made_) {
            ::unlink(path_.c_str());
        }
    }

    [[nodiscard]] bool made() const { return made_; }
    [[nodiscard]] const fs::path& path() const { return path_; }

    /// Brings what was written onto the disk.
    [[nodiscard]] bool sync() const {
        const int file = ::open(path_.c_str(), O_WRONLY | O_CLOEXEC);
        const bool done = file >= 0 && ::fsync(file) == 0;
        if (file >= 0) {
            ::close(file);
        }
        return done;
    }

    /// Gives the file its final name. Without `force` a file of that name that has come up meanwhile is left alone.
    [[nodiscard]] bool rename_to(const fs::path& target, bool force) {
        int failed = ::renameat2(AT_FDCWD, path_.c_str(), AT_FDCWD, target.c_str(), force ? 0U : RENAME_NOREPLACE);
        if (failed != 0 && !force && (errno == EINVAL || errno == ENOSYS)) {
            // This file system can't rename without replacing.
            errno = EEXIST;
            failed = ::access(target.c_str(), F_OK) == 0 ? -1 : ::rename(path_.c_str(), target.c_str());
        }
        made_ = failed != 0;
        return failed == 0;
    }

private:
    fs::path path_;
    bool made_ = false;
};

void sync_folder(const fs::path& folder) {
    const int file = ::open(folder.empty() ? "." : folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (file >= 0) {
        ::fsync(file); // Some file systems can't; the file itself is on the disk.
        ::close(file);
    }
}

std::string reason(int error) {
    return std::generic_category().message(error);
}

tl::unexpected<Fault> exists_already(const fs::path& path) {
    return fail(path.string(), "this file exists already", "choose another name, or write over it with --force");
}

/// The file that is to be written: the end of a chain of symbolic links. Fails where nothing can be written.
Outcome<fs::path> target_of(const fs::path& path, bool force) {
    std::error_code error;
    const fs::file_status status = fs::status(path, error);
    if (path.empty() || !path.has_filename()) {
        return fail(path.string(), "this is no name of a file", "name a file to write to");
    }
    if (fs::exists(status)) {
        if (!fs::is_regular_file(status)) {
            return fail(path.string(), fs::is_directory(status) ? "this is a folder" : "this is no ordinary file",
                        "name a file to write to");
        }
        if (!force) {
            return exists_already(path);
        }
    }
    if (fs::is_symlink(fs::symlink_status(path, error))) {
        const fs::path target = fs::weakly_canonical(path, error);
        return error ? path : target;
    }
    return path;
}

} // namespace

Outcome<void> check_whole_file(const fs::path& path, bool force) {
    const auto target = target_of(path, force);
    if (!target) {
        return tl::unexpected(target.error());
    }
    const fs::path folder = target->has_parent_path() ? target->parent_path() : fs::path(".");
    std::error_code error;
    if (!fs::is_directory(folder, error)) {
        return fail(path.string(), "there is no folder " + folder.string(), "make it, or name another file");
    }
    if (::access(folder.c_str(), W_OK | X_OK) != 0) {
        return fail(path.string(), "the folder can't be written to: " + reason(errno), "name a file in another folder");
    }
    return {};
}

Outcome<void> make_whole_file(const fs::path& path, bool force,
                              const std::function<Outcome<void>(const fs::path&)>& maker) {
    const auto target = target_of(path, force);
    if (!target) {
        return tl::unexpected(target.error());
    }
    errno = 0;
    NewFile file(*target);
    if (!file.made()) {
        return fail(path.string(), "it can't be written: " + reason(errno),
                    "check that the folder is there and may be written to");
    }
    if (auto written = maker(file.path()); !written) {
        return written;
    }
    errno = 0;
    if (!file.sync()) {
        return fail(path.string(), "writing broke off: " + reason(errno), "check the space left on the disk");
    }
    if (!file.rename_to(*target, force)) {
        return errno == EEXIST ? exists_already(path)
                               : fail(path.string(), "it can't be written: " + reason(errno),
                                      "check that the folder may be written to");
    }
    sync_folder(target->parent_path());
    return {};
}

Outcome<void> write_whole_file(const fs::path& path, bool force,
                               const std::function<Outcome<void>(std::ostream&)>& writer) {
    return make_whole_file(path, force, [&](const fs::path& part) -> Outcome<void> {
        std::ofstream out(part, std::ios::binary | std::ios::trunc);
        if (auto written = writer(out); !written) {
            return written;
        }
        out.close();
        if (!out) {
            // What the system said first, such as of a full disk, is gone by now.
            return fail(path.string(), "writing broke off", "check the space left on the disk");
        }
        return {};
    });
}

} // namespace pithward
