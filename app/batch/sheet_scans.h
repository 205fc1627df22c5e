#pragma once

#include "app/batch/project_scans.h"
#include "libcore/formats/field_sheet.h"
#include "libcore/record/project_values.h"

#include <filesystem>
#include <vector>

namespace pithward::batch {

/// The scans for a field sheet's cores, and what of them a person is to settle.
struct SheetScans {
    std::vector<record::ScanEntry> entries; ///< Those of cores, and those that no core has, which have no checksum.
    std::size_t of_cores = 0;               ///< How many scans cores have.
    std::vector<Fault> open;                ///< Cores without a scan, scans without a core, and what may be two things.
};

/// Gives each core of a sheet the path of its scan, from `home`, and its place on it where it shows several
/// (libcore/field/scan_matching.h). Reads the codes of scans that no name settles. What leads out of `home` is taken
/// only where it is named in `outside`. Fails where a scan of a core can't be read.
[[nodiscard]] Outcome<SheetScans> take_scans(FieldSheet& sheet, const ScanFolder& folder,
                                             const std::filesystem::path& home,
                                             const std::vector<std::filesystem::path>& outside);

} // namespace pithward::batch
