#include "libcore/edit/reading_edits.h"
#include "libcore/record/connection.h"
#include "tests/record/made_up_project.h"
#include "tests/support/only_reading.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <random>

namespace pithward::record {
namespace {

using Access = Project::Access;

std::string refusal_of(const std::string& file, Access access = Access::Write) {
    const auto project = Project::open(file, access);
    EXPECT_FALSE(project.has_value()) << file;
    if (!project) {
        EXPECT_FALSE(project.error().remedy.empty());
        EXPECT_EQ(project.error().line().find('\n'), std::string::npos);
        EXPECT_EQ(project.error().where, file);
    }
    return project ? "" : project.error().what;
}

TEST(BadProject, WhatIsNoProjectIsRefusedAndNotTouched) {
    const test::TemporaryFolder folder;
    EXPECT_EQ(refusal_of(folder.file("none.pithward")), "there is no such project");
    EXPECT_EQ(refusal_of(folder.file("")), "this is no project of Pithward");
    for (const std::string& bytes : {std::string(), std::string("RIFF"), std::string(5000, 'x'),
                                     std::string("SQLite format 3\0", 16) + std::string(5000, '\0')}) {
        const std::string file = folder.write("bad.pithward", bytes);
        EXPECT_EQ(refusal_of(file), "this is no project of Pithward");
        EXPECT_EQ(refusal_of(file, Access::Read), "this is no project of Pithward");
        EXPECT_EQ(test::bytes_of(file), bytes);
    }
}

TEST(BadProject, AFileCutAnywhereIsRefusedAndNotTouched) {
    const test::TemporaryFolder folder;
    { const Project project = test::made_up_project(folder.file("a.pithward")); }
    const std::string whole = test::bytes_of(folder.file("a.pithward"));
    std::mt19937 random(2);
    for (int n = 0; n < 200; ++n) {
        const std::string cut = whole.substr(0, random() % whole.size());
        const std::string file = folder.write("cut.pithward", cut);
        const std::string said = refusal_of(file, n % 2 == 0 ? Access::Write : Access::Read);
        EXPECT_TRUE(said == "the file is cut short" || said == "this is no project of Pithward") << said;
        ASSERT_EQ(test::bytes_of(file), cut);
    }
}

TEST(BadProject, BytesThatWereOverwrittenDoNoHarm) {
    const test::TemporaryFolder folder;
    { const Project project = test::made_up_project(folder.file("a.pithward")); }
    const std::string whole = test::bytes_of(folder.file("a.pithward"));
    std::mt19937 random(3);
    int noticed = 0;
    for (int n = 0; n < 150; ++n) {
        std::string bytes = whole;
        for (int k = 0; k < 200; ++k) {
            bytes[100 + random() % (bytes.size() - 100)] = static_cast<char>(random() % 256);
        }
        const std::string file = folder.write("bad.pithward", bytes);
        const auto project = Project::open(file, Access::Read);
        bool sound = project.has_value();
        if (sound) {
            sound = project->cores().has_value() && project->history().has_value();
            const auto readings = project->readings();
            sound = sound && readings.has_value();
            for (const ReadingEntry& entry : readings.value_or(std::vector<ReadingEntry>{})) {
                sound = project->document(entry.id).has_value() && sound;
            }
        }
        noticed += sound ? 0 : 1;
    }
    EXPECT_GT(noticed, 75) << "as far as values can be told to be wrong";
}

TEST(BadProject, AnotherProgramsDataBaseIsRefused) {
    const test::TemporaryFolder folder;
    const std::string file = folder.file("other.db");
    {
        const auto other = Connection::open(file, Connection::Mode::Create);
        ASSERT_TRUE((*other)->run("CREATE TABLE mine (x)").has_value());
    }
    EXPECT_EQ(refusal_of(file), "this is no project of Pithward");
}

TEST(BadProject, ATriggerThatAStrangerPutInIsRefused) {
    const test::TemporaryFolder folder;
    const std::string file = folder.file("a.pithward");
    { const Project project = test::made_up_project(file); }
    {
        const auto stranger = Connection::open(file, Connection::Mode::Write);
        ASSERT_TRUE(
            (*stranger)->run("CREATE TRIGGER t AFTER INSERT ON history BEGIN DELETE FROM boundary; END").has_value());
    }
    EXPECT_EQ(refusal_of(file), "this is no project of Pithward");
    EXPECT_EQ(refusal_of(file, Access::Read), "this is no project of Pithward");
}

TEST(BadProject, ValuesThatCannotBeAreRefused) {
    const test::TemporaryFolder folder;
    for (const char* harm :
         {"UPDATE boundary SET x = 9e999", "UPDATE boundary SET leg = -1", "UPDATE boundary SET leg = 5",
          "UPDATE boundary SET curve = 'zzz'", "UPDATE boundary SET flags = 'eaten'", "UPDATE reading SET path = '{'",
          "UPDATE reading SET entries = '[]'", "UPDATE finding SET value = 7",
          "UPDATE calibration SET px_per_mm_x = 0"}) {
        const std::string file = folder.file(std::to_string(std::hash<std::string>()(harm)) + ".pithward");
        { const Project project = test::made_up_project(file, 4); }
        {
            const auto connection = Connection::open(file, Connection::Mode::Write);
            ASSERT_TRUE((*connection)->run(harm).has_value()) << harm;
        }
        const Project project = test::opened(file);
        EXPECT_FALSE(project.reading(ReadingId{1}).has_value()) << harm;
        EXPECT_FALSE(project.document(ReadingId{1}).has_value()) << harm;
    }
}

TEST(BadProject, AReadOnlyFileCanBeReadAndNotChanged) {
    const test::TemporaryFolder folder;
    const std::string file = folder.file("a.pithward");
    { const Project project = test::made_up_project(file); }
    const std::string bytes = test::bytes_of(file);
    {
        const test::OnlyReading only_reading(folder);
        if (!only_reading.rights.hold()) {
            GTEST_SKIP() << "whoever runs this may write to everything, or nobody can reach the folder";
        }
        EXPECT_EQ(test::opened(file, Access::Read).cores()->size(), 4U);
        EXPECT_EQ(refusal_of(file), "the project or its folder can't be written to");

        Project project = test::opened(file, Access::AsAllowed);
        EXPECT_FALSE(project.can_change());
        EXPECT_EQ(project.remark(), "the project or its folder can't be written to: it can be looked at, not changed");
        const Reading reading = project.reading(ReadingId{1}).value();
        EXPECT_FALSE(project.edit(ReadingId{1}, set_note(reading, "x"), test::stamp_by("Ida")).has_value());
    }
    EXPECT_EQ(test::bytes_of(file), bytes);
    EXPECT_TRUE(test::opened(file, Access::AsAllowed).can_change());
}

TEST(BadProject, AReaderChangesNothing) {
    const test::TemporaryFolder folder;
    const std::string file = folder.file("a.pithward");
    { const Project project = test::made_up_project(file); }
    const std::string bytes = test::bytes_of(file);
    {
        Project project = test::opened(file, Access::Read);
        const Reading reading = project.reading(ReadingId{1}).value();
        const auto refused = project.edit(ReadingId{1}, set_note(reading, "x"), test::stamp_by("Ida"));
        ASSERT_FALSE(refused.has_value());
        EXPECT_EQ(refused.error().what, "the project or its folder can't be written to");
    }
    EXPECT_EQ(test::bytes_of(file), bytes);
}

} // namespace
} // namespace pithward::record
