#pragma once

#include "libcore/edit/document.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/site.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace pithward::batch {

/// Scans of a folder by the cores that they show.
class ScanFolder {
public:
    /// Lists the files that may be scans. Fails on what is no folder.
    [[nodiscard]] static Outcome<ScanFolder> of(const std::filesystem::path& folder);

    /// The scan of a core: the one that the field sheet names, else the one that is called after the core. Nothing
    /// where there is none. A name that leads out of the folder finds nothing.
    [[nodiscard]] std::optional<std::filesystem::path> scan_of(const Core& core) const;

private:
    std::filesystem::path folder_;
    std::vector<std::filesystem::path> scans_;
};

/// Who runs the command, now: as told, else as the system names the user.
[[nodiscard]] EditStamp stamp_now(const std::string& by);

} // namespace pithward::batch
