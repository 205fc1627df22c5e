#pragma once

#include "app/batch/project_scans.h"
#include "libcore/formats/field_sheet.h"
#include "libcore/record/scan_entry.h"

#include <filesystem>
#include <vector>

namespace pithward::batch {

/// The scans for a field sheet's cores, and what of them a person is to settle.
struct SheetScans {
    std::vector<record::ScanToSum> of_cores; ///< Each once.
    std::vector<record::ScanEntry> left;     ///< Those that no core has; without checksums.
    std::vector<Fault> open; ///< Cores without a scan, scans without a core, and what may be two things.
};

/// Gives each core of a sheet the path of its scan, from `home`, and its place on it where it shows several
/// (libcore/field/scan_matching.h). Reads the codes of scans that no name settles. What leads out of `home` is taken
/// only where it is named in `outside`.
[[nodiscard]] SheetScans take_scans(FieldSheet& sheet, const ScanFolder& folder, const std::filesystem::path& home,
                                    const std::vector<std::filesystem::path>& outside);

} // namespace pithward::batch
