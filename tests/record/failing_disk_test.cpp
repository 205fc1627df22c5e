// What a project does when the disk under it does not play along.
#include "libcore/edit/reading_edits.h"
#include "tests/record/made_up_project.h"
#include "tests/support/only_reading.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>
#include <sys/mount.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>

namespace pithward::record {
namespace {

namespace fs = std::filesystem;
using test::stamp_by;

Outcome<std::optional<EditRecord>> note(Project& project, const std::string& text) {
    const Reading reading = project.reading(ReadingId{1}).value();
    return project.edit(ReadingId{1}, set_note(reading, text), stamp_by("Ida"));
}

TEST(FailingDisk, AFileDeletedOrReplacedUnderneathIsToldAndNotWrittenTo) {
    const test::TemporaryFolder folder;
    const std::string file = folder.file("a.pithward");
    const std::string copy = folder.file("copy.pithward");
    {
        Project project = test::made_up_project(file);
        ASSERT_TRUE(note(project, "told as done").has_value());
        ASSERT_TRUE(project.copy_to(copy).has_value());
        fs::remove(file);
        for (int n = 0; n < 2; ++n) {
            const auto refused = note(project, "lost");
            ASSERT_FALSE(refused.has_value());
            EXPECT_EQ(refused.error().where, file);
            EXPECT_NE(refused.error().what.find("deleted or replaced while it was open"), std::string::npos);
            fs::copy_file(copy, file, fs::copy_options::overwrite_existing); // another file of the same name
        }
    }
    fs::remove(file + "-wal");
    fs::remove(file + "-shm");
    EXPECT_EQ(test::opened(file).reading(ReadingId{1})->note, "told as done");
}

/// A folder that anybody may enter, with a project of one edit in it.
std::string open_to_all(const test::TemporaryFolder& folder) {
    fs::permissions(folder.file(""), fs::perms(0755));
    std::string file = folder.file("a.pithward");
    Project project = test::made_up_project(file);
    EXPECT_TRUE(note(project, "told as done").has_value());
    return file;
}

TEST(FailingDisk, AReadOnlyFileOrFolderIsReadAndNotChanged) {
    for (const bool whole_folder : {false, true}) {
        const test::TemporaryFolder folder;
        const std::string file = open_to_all(folder);
        fs::permissions(file, fs::perms(whole_folder ? 0644 : 0444));
        fs::permissions(folder.file(""), fs::perms(whole_folder ? 0555 : 0755));
        const std::string bytes = test::bytes_of(file);
        {
            const test::AsNobody nobody;
            if (::access(folder.file("").c_str(), X_OK) != 0) {
                GTEST_SKIP() << "the folder of the tests is closed to others";
            }
            const Project reader = test::opened(file, Project::Access::Read);
            EXPECT_EQ(reader.reading(ReadingId{1})->note, "told as done");
            const auto refused = Project::open(file, Project::Access::Write);
            ASSERT_FALSE(refused.has_value());
            EXPECT_EQ(refused.error().where, file);
            EXPECT_FALSE(refused.error().remedy.empty());
        }
        fs::permissions(folder.file(""), fs::perms(0755));
        EXPECT_EQ(test::bytes_of(file), bytes);
    }
}

/// A disk of a few hundred kilobytes, where the system lets a test have one.
class SmallDisk {
public:
    explicit SmallDisk(std::string place)
        : place_(std::move(place)) {
        fs::create_directory(place_);
        mounted_ = ::mount("tmpfs", place_.c_str(), "tmpfs", 0, "size=600k") == 0;
    }
    ~SmallDisk() {
        if (mounted_) {
            EXPECT_EQ(::umount(place_.c_str()), 0);
        }
    }
    SmallDisk(const SmallDisk&) = delete;
    SmallDisk& operator=(const SmallDisk&) = delete;
    [[nodiscard]] bool mounted() const { return mounted_; }

private:
    std::string place_;
    bool mounted_ = false;
};

TEST(FailingDisk, AFullDiskLosesNothingThatWasTold) {
    const test::TemporaryFolder folder;
    const SmallDisk disk(folder.file("disk"));
    if (!disk.mounted()) {
        GTEST_SKIP() << "no small disk can be mounted here";
    }
    const std::string file = folder.file("disk/a.pithward");
    std::string last;
    {
        Project project = test::made_up_project(file);
        Outcome<std::optional<EditRecord>> made;
        for (int n = 0; n < 1000 && made; ++n) {
            const std::string text = std::to_string(n) + std::string(4000, 'x');
            made = note(project, text);
            last = made ? text : last;
        }
        ASSERT_FALSE(made.has_value()) << "the disk was too large";
        EXPECT_EQ(made.error().line(),
                  file + ": the disk is full; nothing of this change was written; make room and try again");
        EXPECT_EQ(project.reading(ReadingId{1})->note, last);
    }
    const Project project = test::opened(file, Project::Access::Read);
    EXPECT_EQ(project.reading(ReadingId{1})->note, last) << "an edit that was told as done is lost";
    EXPECT_TRUE(project.check().has_value());
}

} // namespace
} // namespace pithward::record
