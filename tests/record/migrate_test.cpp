#include "libcore/record/project_header.h"
#include "libcore/record/schema.h"
#include "tests/record/made_up_project.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>

#include <array>
#include <filesystem>

namespace pithward::record {
namespace {

constexpr std::array next_version{"ALTER TABLE person ADD COLUMN initials TEXT NOT NULL DEFAULT ''",
                                  "UPDATE person SET initials = substr(name, 1, 1)"};
constexpr std::array wrong_version{"ALTER TABLE person ADD COLUMN initials TEXT NOT NULL DEFAULT ''",
                                   "UPDATE nobody SET initials = 1"};

std::vector<MigrationStep> steps_and(MigrationStep more) {
    std::vector<MigrationStep> steps(migration_steps().begin(), migration_steps().end());
    steps.push_back(more);
    return steps;
}

std::unique_ptr<Connection> connected(const std::string& file) {
    auto connection = Connection::open(file, Connection::Mode::Write);
    EXPECT_TRUE(connection.has_value()) << (connection ? "" : connection.error().line());
    return std::move(*connection);
}

TEST(Migrate, AStepIsTakenAfterACopyWasMade) {
    const test::TemporaryFolder folder;
    const std::string file = folder.file("a.pithward");
    {
        Project project = test::made_up_project(file);
        ASSERT_TRUE(project.put_person({"Sue", "supervisor"}, test::stamp_by("Ida")).has_value());
    }
    {
        const auto connection = connected(file);
        ASSERT_TRUE(migrate(*connection, steps_and(next_version)).has_value());
        EXPECT_EQ(connection->version().value(), project_version + 1);
        EXPECT_EQ(connection->value("SELECT initials FROM person")->toString(), "S");
    }
    // The copy is the project as it was; the new one is refused, in words, and not touched.
    Project before = test::opened(file + ".version-1");
    EXPECT_EQ(before.people()->size(), 1U);
    const std::string bytes = test::bytes_of(file);
    const auto refused = Project::open(file, Project::Access::Write);
    ASSERT_FALSE(refused.has_value());
    EXPECT_NE(refused.error().what.find("a newer Pithward wrote this project (version 2"), std::string::npos);
    EXPECT_EQ(test::bytes_of(file), bytes);
}

TEST(Migrate, AStepThatFailsLeavesTheOldVersion) {
    const test::TemporaryFolder folder;
    const std::string file = folder.file("a.pithward");
    { const Project project = test::made_up_project(file); }
    {
        const auto connection = connected(file);
        EXPECT_FALSE(migrate(*connection, steps_and(wrong_version)).has_value());
        EXPECT_EQ(connection->version().value(), project_version);
    }
    EXPECT_TRUE(test::opened(file).check().has_value());
}

TEST(Migrate, NothingIsDoneToWhatIsUpToDate) {
    const test::TemporaryFolder folder;
    const std::string file = folder.file("a.pithward");
    { const Project project = test::made_up_project(file); }
    ASSERT_TRUE(migrate(*connected(file), migration_steps()).has_value());
    EXPECT_FALSE(std::filesystem::exists(file + ".version-1"));
}

} // namespace
} // namespace pithward::record
