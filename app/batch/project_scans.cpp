#include "app/batch/project_scans.h"

#include "libcore/formats/text_input.h"
#include "libcore/record/project.h"
#include "libcore/record/scan_search.h"

#include <algorithm>
#include <array>
#include <cstdlib>

namespace pithward::batch {

Outcome<ScanFolder> ScanFolder::of(const std::filesystem::path& folder) {
    static constexpr std::array<std::string_view, 5> endings{".tif", ".tiff", ".png", ".jpg", ".jpeg"};
    std::error_code error;
    ScanFolder scans;
    scans.folder_ = folder;
    for (const auto& entry : std::filesystem::directory_iterator(folder, error)) {
        const std::string ending = formats::lower_case(entry.path().extension().string());
        if (std::ranges::find(endings, ending) != endings.end()) {
            scans.names_.push_back(entry.path().filename().string());
        }
    }
    if (error) {
        return fail(folder.string(), "there is no such folder, or it can't be read", "name the folder of the scans");
    }
    std::ranges::sort(scans.names_);
    return scans;
}

std::optional<std::filesystem::path> ScanFolder::file_of(const std::string& name) const {
    std::error_code error;
    const bool there = record::stays_inside(name) && std::filesystem::is_regular_file(folder_ / name, error);
    return there ? std::optional(folder_ / name) : std::nullopt;
}

EditStamp stamp_now(const std::string& by) {
    const char* user = std::getenv("USER");
    const std::string who = !by.empty() ? by : (user != nullptr && *user != '\0' ? user : "unnamed");
    return {who, record::utc_now(), PITHWARD_VERSION};
}

} // namespace pithward::batch
