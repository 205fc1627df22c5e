#include "app/batch/outside_folders.h"

#include "libcore/record/scan_search.h"

namespace pithward::batch {

void add_outside_option(CLI::App& parser, std::vector<std::string>& folders) {
    parser
        .add_option("--outside", folders,
                    "Folder outside of the project's own whose scans may be read; may stand several times")
        ->allow_extra_args(false);
}

Outcome<std::vector<std::filesystem::path>> outside_folders(const std::vector<std::string>& folders) {
    std::vector<std::filesystem::path> named;
    named.reserve(folders.size());
    for (const std::string& folder : folders) {
        std::error_code error;
        if (!std::filesystem::is_directory(folder, error)) {
            return fail(folder, "there is no such folder", "name one with --outside");
        }
        named.push_back(record::real_place(folder));
    }
    return named;
}

Fault not_named(const std::string& path, const std::filesystem::path& place) {
    return {path, "the scan is outside of the project's folder, at " + place.string(),
            "if you know that place, allow its folder with --outside DIR; else leave it alone"};
}

} // namespace pithward::batch
