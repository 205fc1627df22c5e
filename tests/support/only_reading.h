#pragma once

#include "tests/support/temporary_folder.h"

#include <filesystem>

namespace pithward::test {

/// While this lives, all may read a folder and the files in it, and none may change anything there, but for root.
class ReadOnlyRights {
public:
    explicit ReadOnlyRights(const TemporaryFolder& folder);
    ~ReadOnlyRights();
    /// Whether the process that asks may read the folder and not write to it.
    [[nodiscard]] bool hold() const;
    ReadOnlyRights(const ReadOnlyRights&) = delete;
    ReadOnlyRights& operator=(const ReadOnlyRights&) = delete;

private:
    std::filesystem::path folder_;
};

/// While this lives, the process has the rights of nobody where root runs it and may become nobody.
class AsNobody {
public:
    AsNobody();
    ~AsNobody();
    AsNobody(const AsNobody&) = delete;
    AsNobody& operator=(const AsNobody&) = delete;

private:
    bool was_root_;
};

/// While this lives, the process may read a folder and the files in it, and change nothing there.
struct OnlyReading {
    explicit OnlyReading(const TemporaryFolder& folder)
        : rights(folder) {}

    ReadOnlyRights rights;
    AsNobody nobody; ///< Ends first: nobody could not give back the rights.
};

} // namespace pithward::test
