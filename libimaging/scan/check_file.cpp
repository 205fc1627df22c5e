#include "libimaging/scan/check_file.h"

#include <unistd.h>

#include <cerrno>
#include <filesystem>
#include <system_error>

namespace pithward::scan {

namespace fs = std::filesystem;

std::optional<Fault> fault_of_file(const std::string& path) {
    std::error_code error;
    const fs::file_status status = fs::status(path, error);
    if (!fs::exists(status)) {
        return status.type() == fs::file_type::not_found || !error
                   ? Fault{path, "there is no such file", "check the name"}
                   : Fault{path, "it can't be reached: " + error.message(), "check the name and its folder"};
    }
    if (fs::is_directory(status)) {
        return Fault{path, "this is a folder", "name a scan in it"};
    }
    if (!fs::is_regular_file(status)) {
        return Fault{path, "this is no ordinary file", "name a TIFF, PNG or JPEG file"};
    }
    if (::access(path.c_str(), R_OK) != 0) {
        return Fault{path, "it can't be read: " + std::generic_category().message(errno),
                     "check that you may read the file"};
    }
    if (fs::file_size(path, error) == 0 && !error) {
        return Fault{path, "the file is empty", "scan again or take an undamaged copy"};
    }
    return std::nullopt;
}

} // namespace pithward::scan
