#include "app/project/checksums.h"

#include "app/bench/model/beside_window.h"
#include "libcore/record/scan_entry.h"
#include "libcore/record/scan_search.h"

namespace pithward::bench {

namespace {

Outcome<record::ScanEntry> sum_inside(const std::filesystem::path& folder, const std::string& path, const Work& work) {
    std::error_code unknown;
    const auto file = folder / path;
    if (record::place_outside(folder, path) || !std::filesystem::is_regular_file(file, unknown)) {
        return fail(path, "the scan is outside of the project's folder, or no file", "put it back");
    }
    return record::scan_entry(file, path, work);
}

} // namespace

Checksums::Checksums() {
    pool_.setMaxThreadCount(1); // the disk is shared with the scan that is looked at
}

Checksums::~Checksums() {
    stop_.request_stop();
    pool_.clear();
    pool_.waitForDone();
}

void Checksums::compute(const std::filesystem::path& folder, const std::string& path) {
    if (!asked_.insert(path).second) {
        return;
    }
    Work work;
    work.stop = stop_.get_token();
    beside_window(
        pool_, this, [folder, path, work] { return sum_inside(folder, path, work); },
        [this](const Outcome<record::ScanEntry>& entry) {
            if (entry) {
                emit computed(*entry);
            }
        });
}

} // namespace pithward::bench
