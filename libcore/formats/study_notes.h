#pragma once

#include "libcore/specimen/site.h"

#include <optional>
#include <string>
#include <vector>

namespace pithward {

/// What a project knows of a study that is to be sent to the archive. What it does not know is empty and left to the
/// study's people.
struct StudyNotes {
    std::string sites; ///< Their names.
    std::optional<double> north;
    std::optional<double> south;
    std::optional<double> east;
    std::optional<double> west;
    std::optional<double> elevation_m; ///< The mean, where sites differ.
    std::string species;
    std::string collectors;
    std::string notes; ///< Years of coring, numbers of trees and cores.
    friend bool operator==(const StudyNotes&, const StudyNotes&) = default;
};

/// The notes of sites with their trees and cores, each name once, in order of first sight.
[[nodiscard]] StudyNotes study_notes(const std::vector<Site>& sites);

} // namespace pithward
