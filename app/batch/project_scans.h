#pragma once

#include "libcore/edit/document.h"
#include "libcore/specimen/outcome.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace pithward::batch {

/// The scans of a folder.
class ScanFolder {
public:
    /// Lists the files that may be scans; where the folder has none itself, those of the folders below it, of which at
    /// most 100,000 files are looked at and no links are followed. Fails on what is no folder.
    [[nodiscard]] static Outcome<ScanFolder> of(const std::filesystem::path& folder);

    /// The names of those files, from the folder on, sorted.
    [[nodiscard]] const std::vector<std::string>& names() const { return names_; }
    /// What the list calls a scan that a field sheet names: the same, or the only one of that name in a folder below.
    [[nodiscard]] std::string listed(const std::string& scan) const;
    /// The file of a name, which may lead into a folder below. Nothing where there is none, and for a name that leads
    /// out of the folder.
    [[nodiscard]] std::optional<std::filesystem::path> file_of(const std::string& name) const;

private:
    std::filesystem::path folder_;
    std::vector<std::string> names_;
};

/// Who runs the command, now: as told, else as the system names the user.
[[nodiscard]] EditStamp stamp_now(const std::string& by);

} // namespace pithward::batch
