#include "libcore/record/project_header.h"
#include "libcore/record/schema.h"
#include "tests/record/made_up_project.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <csignal>
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

/// Runs something in a process of its own that is killed as soon as it writes beyond a size to any file.
template <typename Act>
bool killed_beyond(rlim_t bytes, Act act) {
    const pid_t child = ::fork();
    if (child == 0) {
        const rlimit none{0, 0};
        ::setrlimit(RLIMIT_CORE, &none);
        const rlimit limit{bytes, bytes};
        ::setrlimit(RLIMIT_FSIZE, &limit);
        act();
        ::_exit(0);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFSIGNALED(status) && WTERMSIG(status) == SIGXFSZ;
}

/// A project of some 600 kB.
std::string large_project(const test::TemporaryFolder& folder) {
    std::string file = folder.file("a.pithward");
    Project project = test::made_up_project(file);
    EXPECT_TRUE(project.put_person({"Sue", std::string(300'000, 'x')}, test::stamp_by("Ida")).has_value());
    return file;
}

int parts_in(const test::TemporaryFolder& folder) {
    int parts = 0;
    for (const auto& entry : std::filesystem::directory_iterator(folder.file(""))) {
        parts += entry.path().extension() == ".part" ? 1 : 0;
    }
    return parts;
}

TEST(Migrate, BeingKilledInTheMiddleOfTheCopyLeavesNoCopyAndTheOldVersion) {
    constexpr rlim_t a_part = 200'000;
    const test::TemporaryFolder folder;
    const std::string file = large_project(folder);
    ASSERT_TRUE(killed_beyond(a_part, [&] { (void)migrate(*connected(file), steps_and(next_version)); }));
    EXPECT_FALSE(std::filesystem::exists(file + ".version-1"));
    EXPECT_EQ(parts_in(folder), 1) << "it was killed before the copy or after it";
    {
        const auto connection = connected(file);
        EXPECT_EQ(connection->version().value(), project_version);
        ASSERT_TRUE(migrate(*connection, steps_and(next_version)).has_value());
    }
    EXPECT_TRUE(test::opened(file + ".version-1").check().has_value());
}

TEST(Migrate, ACopyIsWholeOrNotThere) {
    constexpr rlim_t a_part = 200'000;
    const test::TemporaryFolder folder;
    const std::string file = large_project(folder);
    const std::string copy = folder.file("copy.pithward");
    ASSERT_TRUE(killed_beyond(
        a_part, [&] { (void)test::opened(file, Project::Access::Read).copy_to(folder.file("copy.pithward")); }));
    EXPECT_FALSE(std::filesystem::exists(copy));
    EXPECT_EQ(parts_in(folder), 1);
    // Where writing fails without a kill, nothing is left at all.
    ASSERT_FALSE(killed_beyond(a_part, [&] {
        (void)::signal(SIGXFSZ, SIG_IGN);
        const auto copied = test::opened(file, Project::Access::Read).copy_to(folder.file("copy.pithward"));
        ::_exit(copied ? 1 : 0);
    }));
    EXPECT_FALSE(std::filesystem::exists(copy));
    EXPECT_EQ(parts_in(folder), 1);
    ASSERT_TRUE(test::opened(file).copy_to(copy).has_value());
    EXPECT_TRUE(test::opened(copy).check().has_value());
}

} // namespace
} // namespace pithward::record
