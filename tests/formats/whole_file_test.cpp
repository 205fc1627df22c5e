#include "libcore/formats/series_formats.h"
#include "libcore/formats/whole_file.h"
#include "tests/formats/series_support.h"

#include <filesystem>
#include <fstream>
#include <iterator>

namespace pithward {
namespace {

namespace fs = std::filesystem;
using test::contains;

class WholeFile : public testing::Test {
protected:
    WholeFile() { fs::create_directories(folder_); }
    ~WholeFile() override { fs::remove_all(folder_); }

    static Outcome<void> write(const fs::path& path, bool force, const std::string& text) {
        return write_whole_file(path, force, [&](std::ostream& out) -> Outcome<void> {
            out << text;
            return {};
        });
    }
    static std::string content(const fs::path& path) {
        std::ifstream in(path);
        return {std::istreambuf_iterator<char>(in), {}};
    }
    std::size_t files() const {
        return static_cast<std::size_t>(std::distance(fs::directory_iterator(folder_), fs::directory_iterator()));
    }

    fs::path folder_ = fs::path(testing::TempDir()) / ("pithward w\xC3\xB6rk " + std::to_string(::getpid()));
};

TEST_F(WholeFile, IsToldBeforehandWhereItCantBeWritten) {
    EXPECT_TRUE(check_whole_file(folder_ / "new.csv", false).has_value());
    EXPECT_EQ(files(), 0U);
    ASSERT_TRUE(write(folder_ / "old.csv", false, "text").has_value());
    EXPECT_TRUE(check_whole_file(folder_ / "old.csv", true).has_value());
    EXPECT_EQ(content(folder_ / "old.csv"), "text");
    for (const auto& [path, words] : {std::pair{folder_ / "old.csv", "exists already"},
                                      {folder_ / "missing" / "new.csv", "there is no folder"},
                                      {folder_ / "old.csv" / "new.csv", "there is no folder"},
                                      {folder_, "this is a folder"}}) {
        const auto refused = check_whole_file(path, false);
        ASSERT_FALSE(refused.has_value()) << path;
        EXPECT_TRUE(contains(refused.error().line(), words)) << refused.error().line();
    }
}

TEST_F(WholeFile, IsWrittenUnderNamesWithSpacesAndLettersOfAllKinds) {
    const fs::path path = folder_ / "\xC3\xA5rring 1.rwl";
    ASSERT_TRUE(write(path, false, "text").has_value());
    EXPECT_EQ(content(path), "text");
    EXPECT_EQ(files(), 1U);
}

TEST_F(WholeFile, IsNotWrittenOverWithoutForce) {
    const fs::path path = folder_ / "a";
    ASSERT_TRUE(write(path, false, "old").has_value());
    const auto refused = write(path, false, "new");
    ASSERT_FALSE(refused.has_value());
    EXPECT_TRUE(contains(refused.error().line(), "a: this file exists already"));
    EXPECT_TRUE(contains(refused.error().remedy, "--force"));
    EXPECT_EQ(content(path), "old");
    ASSERT_TRUE(write(path, true, "new").has_value());
    EXPECT_EQ(content(path), "new");
}

TEST_F(WholeFile, IsNotThereAtAllWhenTheWriterFails) {
    const fs::path path = folder_ / "a";
    const auto failing = [](std::ostream& out) -> Outcome<void> {
        out << "half";
        return fail("", "wrong", "do");
    };
    EXPECT_FALSE(write_whole_file(path, false, failing).has_value());
    EXPECT_EQ(files(), 0U);
    ASSERT_TRUE(write(path, false, "old").has_value());
    EXPECT_FALSE(write_whole_file(path, true, failing).has_value());
    EXPECT_EQ(content(path), "old");
    EXPECT_EQ(files(), 1U);
}

TEST_F(WholeFile, ThatAppearsMeanwhileIsLeftAlone) {
    const fs::path path = folder_ / "a";
    const auto raced = write_whole_file(path, false, [&](std::ostream& out) -> Outcome<void> {
        std::ofstream(path) << "theirs";
        out << "ours";
        return {};
    });
    EXPECT_FALSE(raced.has_value());
    EXPECT_EQ(content(path), "theirs");
    EXPECT_EQ(files(), 1U);
}

TEST_F(WholeFile, FollowsALink) {
    ASSERT_TRUE(write(folder_ / "real", false, "old").has_value());
    fs::create_symlink("real", folder_ / "link");
    ASSERT_TRUE(write(folder_ / "link", true, "new").has_value());
    EXPECT_EQ(content(folder_ / "real"), "new");
    EXPECT_TRUE(fs::is_symlink(folder_ / "link"));
}

TEST_F(WholeFile, SaysWhyItCantBeWritten) {
    EXPECT_TRUE(contains(write(folder_, true, "x").error().line(), "this is a folder"));
    EXPECT_TRUE(contains(write(folder_ / "none" / "a", false, "x").error().line(), "can't be written"));
    EXPECT_TRUE(contains(write("", false, "x").error().line(), "no name of a file"));
    EXPECT_TRUE(contains(write("/dev/null", true, "x").error().line(), "no ordinary file"));
}

TEST_F(WholeFile, SeriesFilesTakeTheirFormatFromTheirEnding) {
    WidthTable table;
    table.series = {test::series("A", 1990, {1.234})};
    for (const SeriesFormat& format : series_formats()) {
        const fs::path path = folder_ / (std::string("series") + format.extension);
        ASSERT_TRUE(write_series_file(path, false, table).has_value());
        EXPECT_EQ(read_series_file(path).value().series, table.series);
    }
    EXPECT_TRUE(contains(read_series_file(folder_ / "a.doc").error().line(), "use one of .rwl (decadal), .txt"));
    EXPECT_TRUE(contains(read_series_file(folder_ / "none.rwl").error().line(), "can't be opened"));
    std::ofstream(folder_ / "BAD.RWL") << "A       1990   1x0   999\n";
    EXPECT_TRUE(contains(read_series_file(folder_ / "BAD.RWL").error().line(), "BAD.RWL, line 1, column 13: '1x0'"));
}

} // namespace
} // namespace pithward
