#pragma once

#include "libcore/formats/study_notes.h"
#include "libcore/specimen/outcome.h"

#include <string>
#include <string_view>
#include <vector>

namespace pithward {

/// What an archive package still lacks.
struct PackageGap {
    std::string what;
    std::string remedy;
    bool needed = false; ///< Published studies have it throughout; else some have it.
    friend bool operator==(const PackageGap&, const PackageGap&) = default;
};

/// The lines of metadata of a template file that are empty, in the order of the file. Which of them are needed follows
/// published studies; the archive's own rules were not at hand.
[[nodiscard]] std::vector<PackageGap> template_gaps(std::string_view archive_template);

/// Whether the two files of a package say the same, as a reader sees them: identifiers in order, years, each width to
/// 0.001 mm, locally absent rings and gaps. A fault tells the first difference.
[[nodiscard]] Outcome<void> check_package_series(const std::string& decadal, const std::string& archive_template);

} // namespace pithward
