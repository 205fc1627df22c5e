#include "tests/support/only_reading.h"

#include <unistd.h>

#include <cstdlib>

namespace pithward::test {

namespace {

using std::filesystem::perms;

constexpr uid_t nobody_id = 65534; // Debian's
constexpr perms all_read = perms::owner_read | perms::group_read | perms::others_read;
constexpr perms all_enter = perms::owner_exec | perms::group_exec | perms::others_exec;

/// `writing`: what the owner may do beside reading.
void set_rights(const std::filesystem::path& folder, perms writing) {
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
        std::filesystem::permissions(entry, (entry.is_directory() ? all_read | all_enter : all_read) | writing);
    }
    std::filesystem::permissions(folder, all_read | all_enter | writing);
}

} // namespace

ReadOnlyRights::ReadOnlyRights(const TemporaryFolder& folder)
    : folder_(folder.file("")) {
    set_rights(folder_, perms::none);
}

ReadOnlyRights::~ReadOnlyRights() {
    std::error_code ignored;
    std::filesystem::permissions(folder_, perms::owner_all, ignored);
    set_rights(folder_, perms::owner_write);
}

bool ReadOnlyRights::hold() const {
    return ::access(folder_.c_str(), R_OK | X_OK) == 0 && ::access(folder_.c_str(), W_OK) != 0;
}

AsNobody::AsNobody()
    : was_root_(::geteuid() == 0 && ::setresuid(nobody_id, nobody_id, 0) == 0) {}

AsNobody::~AsNobody() {
    if (was_root_ && ::setresuid(0, 0, 0) != 0) {
        std::abort(); // all that follows would run with the wrong rights
    }
}

} // namespace pithward::test
