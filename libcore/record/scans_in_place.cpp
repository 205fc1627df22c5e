#include "libcore/record/scans_in_place.h"

#include "libcore/record/scan_search.h"

namespace pithward::record {

std::set<std::string> scans_in_place(const std::filesystem::path& folder, std::span<const CoreEntry> cores) {
    std::set<std::string> there;
    for (const CoreEntry& core : cores) {
        const std::string& scan = core.core.scan;
        std::error_code error;
        if (!scan.empty() && (!stays_inside(scan) || std::filesystem::exists(folder / scan, error))) {
            there.insert(scan);
        }
    }
    return there;
}

} // namespace pithward::record
