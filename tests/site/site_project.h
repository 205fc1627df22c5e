#pragma once

#include "libcore/dating/site_table.h"
#include "libcore/record/project.h"
#include "tests/record/made_up_project.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>

#include <string>

namespace pithward::bench {

/// A project of eight trees with a core each, T10a to T17a, whose rings of 1921 to 2020 go with each other. Three have
/// mistakes:
/// - T10a took the rings 1970 and 1969 as one; where they meet stands a weak change that was turned down
/// - T11a counts ring 1960 twice, by a boundary that is not sure and has a finding
/// - T12a has no ring 1975, and nothing to show for it
class SiteProject : public testing::Test {
protected:
    static constexpr ReadingId merged{1};
    static constexpr ReadingId split{2};
    static constexpr ReadingId lost{3};

    void SetUp() override { make(8); }
    /// A project of the first so many cores.
    void make(int cores);
    [[nodiscard]] Reading kept(ReadingId id) const {
        return test::opened(file, record::Project::Access::Read).reading(id).value();
    }

    test::TemporaryFolder folder;
    std::string file = folder.file("slope.pithward");
};

} // namespace pithward::bench
