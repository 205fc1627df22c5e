#pragma once

#include "libcore/record/project.h"

#include <random>
#include <string>

namespace pithward::test {

/// A stamp of now for one of the made-up people.
[[nodiscard]] EditStamp stamp_by(const std::string& who);

/// Two made-up sites with three trees and four cores: H01A, H01B, H02A of Hill, and a core H01A of Vale too.
[[nodiscard]] std::vector<Site> made_up_sites();

/// A project of these sites with one random reading for each of the first three cores.
[[nodiscard]] record::Project made_up_project(const std::string& file, unsigned seed = 1);

/// The project of a file, which must be sound.
[[nodiscard]] record::Project opened(const std::string& file,
                                     record::Project::Access access = record::Project::Access::Write);

} // namespace pithward::test
