#include "app/batch/project_scans.h"

#include "libcore/formats/text_input.h"
#include "libcore/record/project.h"
#include "libcore/record/scan_search.h"

#include <algorithm>
#include <array>
#include <cstdlib>

namespace pithward::batch {

namespace {

namespace fs = std::filesystem;

bool may_be_scan(const fs::path& file) {
    static constexpr std::array<std::string_view, 5> endings{".tif", ".tiff", ".png", ".jpg", ".jpeg"};
    return std::ranges::find(endings, formats::lower_case(file.extension().string())) != endings.end();
}

std::vector<std::string> scans_below(const fs::path& folder) {
    constexpr int most_files_seen = 100'000;
    std::vector<std::string> names;
    std::error_code error;
    int seen = 0;
    fs::recursive_directory_iterator entry(folder, fs::directory_options::skip_permission_denied, error);
    for (const fs::recursive_directory_iterator end; !error && entry != end && ++seen <= most_files_seen;
         entry.increment(error)) {
        if (may_be_scan(entry->path())) {
            names.push_back(entry->path().lexically_relative(folder).generic_string());
        }
    }
    return names;
}

} // namespace

Outcome<ScanFolder> ScanFolder::of(const fs::path& folder) {
    std::error_code error;
    ScanFolder scans;
    scans.folder_ = folder;
    for (const auto& entry : fs::directory_iterator(folder, error)) {
        if (may_be_scan(entry.path())) {
            scans.names_.push_back(entry.path().filename().string());
        }
    }
    if (error) {
        return fail(folder.string(), "there is no such folder, or it can't be read", "name the folder of the scans");
    }
    if (scans.names_.empty()) {
        scans.names_ = scans_below(folder);
    }
    std::ranges::sort(scans.names_);
    return scans;
}

std::string ScanFolder::listed(const std::string& scan) const {
    const auto is_same = [&](const std::string& name) { return fs::path(name).filename() == scan; };
    const auto found = std::ranges::find_if(names_, is_same);
    const bool only_one =
        found != names_.end() && std::find_if(std::next(found), names_.end(), is_same) == names_.end();
    const bool there = std::ranges::find(names_, scan) != names_.end();
    return only_one && !there ? *found : scan;
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
