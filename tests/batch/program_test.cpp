// `pithward` as a process: what it writes, what it says, and its exit status.
#include "tests/support/rendered_scan.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>
#include <sys/wait.h>

#include <cstdlib>
#include <filesystem>
#include <string>

namespace pithward::test {
namespace {

namespace fs = std::filesystem;

class ProgramTest : public testing::Test {
protected:
    static void SetUpTestSuite() {
        folder_ = new TemporaryFolder;
        scan_ = rendered_scan(*folder_, clear_scene(7, 1, 25)).scan.header().file;
        fs::create_directory(folder_->file("out"));
    }
    static void TearDownTestSuite() {
        delete folder_;
        folder_ = nullptr;
    }

    /// Runs it in the folder `out`, which is empty then. `before` may set the environment.
    static int run(const std::string& arguments, const std::string& before = "") {
        fs::remove_all(folder_->file("out"));
        fs::create_directory(folder_->file("out"));
        const std::string command = "cd '" + folder_->file("out") + "' && " + before + " '" PITHWARD_PROGRAM "' " +
                                    arguments + " > ../out.log 2> ../said.log";
        const int status = std::system(command.c_str());
        return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }
    static std::string measure(const std::string& options) { return "measure '" + scan_ + "' " + options; }
    static std::string out() { return bytes_of(folder_->file("out.log")); }
    static std::string said() { return bytes_of(folder_->file("said.log")); }
    static std::string written(const std::string& name) { return bytes_of(folder_->file("out/" + name)); }
    static bool nothing_written() { return fs::is_empty(folder_->file("out")) && out().empty(); }
    static bool says(const std::string& words) { return said().find(words) != std::string::npos; }
    /// A failure is one line.
    static bool one_line() { return !said().empty() && said().find('\n') == said().size() - 1; }

    static TemporaryFolder* folder_;
    static std::string scan_;
};

TemporaryFolder* ProgramTest::folder_ = nullptr;
std::string ProgramTest::scan_;

TEST_F(ProgramTest, ASeriesGoesToAFileOrToStandardOutput) {
    ASSERT_EQ(run(measure("--quiet --last-year 2020 --csv - --json a.json --decadal a.rwl")), 0) << said();
    EXPECT_EQ(said(), "");
    const std::string csv = out();
    EXPECT_TRUE(csv.starts_with("year,")) << csv;
    EXPECT_NE(csv.find("\n2020,"), std::string::npos);
    EXPECT_FALSE(written("a.json").empty());
    const std::string decadal = written("a.rwl");
    ASSERT_EQ(run(measure("--quiet --last-year 2020 --csv a.csv --decadal -")), 0) << said();
    EXPECT_EQ(written("a.csv"), csv);
    EXPECT_EQ(out(), decadal);
    EXPECT_FALSE(fs::exists(folder_->file("out/-")));
}

TEST_F(ProgramTest, APictureIsWrittenWithoutADesktopAndWithoutAWord) {
    ASSERT_EQ(run(measure("--quiet --overlay a.png"),
                  "env -u DISPLAY -u WAYLAND_DISPLAY -u XDG_RUNTIME_DIR -u QT_QPA_PLATFORM"),
              0);
    EXPECT_EQ(said(), "");
    EXPECT_TRUE(written("a.png").starts_with("\x89PNG"));
}

TEST_F(ProgramTest, MoreThreadsThanCoresAreNoError) {
    ASSERT_EQ(run(measure("--quiet --threads 256 --csv a.csv")), 0);
    EXPECT_EQ(said(), "");
    EXPECT_EQ(run(measure("--threads 100000")), 2);
    EXPECT_TRUE(one_line() && says("--threads"));
}

TEST_F(ProgramTest, NothingIsMeasuredOrWrittenWhereOneOutputCantBe) {
    for (const char* options :
         {"--json a.json --csv missing/a.csv", "--json a.json --csv a.json", "--csv - --json -",
          "--csv a.csv --overlay -", "--csv a.csv --overlay a.jpg", "--csv a.csv --json \"\"", "--csv a.csv --dpi \"\"",
          "--csv a.csv --from pith", "--csv a.csv --path \"200,100 200.4,100.4\"", "--csv a.csv --last-year -20000"}) {
        EXPECT_EQ(run(measure(options)), 2) << options;
        EXPECT_TRUE(one_line()) << options << "\n" << said();
        EXPECT_TRUE(nothing_written()) << options;
    }
    EXPECT_TRUE(says("--last-year")) << said();
    EXPECT_EQ(run(measure("--force --json '" + scan_ + "'")), 2);
    EXPECT_TRUE(says("the file that is read")) << said();
}

TEST_F(ProgramTest, ABadScanIsToldBeforeTheOthersAreMeasured) {
    EXPECT_EQ(run(measure("missing.tif --csv a.csv")), 2);
    EXPECT_TRUE(one_line() && says("missing.tif: there is no such file")) << said();
    EXPECT_TRUE(nothing_written());
}

TEST_F(ProgramTest, WithoutADisplayTheWindowSaysWhatToDo) {
    for (const char* display : {"-u DISPLAY", "DISPLAY=:987"}) {
        EXPECT_EQ(run("'" + scan_ + "'", std::string("env -u WAYLAND_DISPLAY ") + display + " QT_QPA_PLATFORM="), 2);
        EXPECT_TRUE(one_line() && says("pithward measure")) << said();
    }
}

} // namespace
} // namespace pithward::test
