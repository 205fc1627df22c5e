// `pithward convert` as a process: what it writes, what it says, and its exit status.
#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

namespace {

namespace fs = std::filesystem;

class Convert : public testing::Test {
protected:
    Convert() {
        fs::create_directories(folder_);
        put("plain.rwl", "A       1990   100     0  -999   102   999\n");
        put("odd.rwl", "A       1990   100   999\nA       1994   102   999\n");
    }
    ~Convert() override { fs::remove_all(folder_); }

    void put(const std::string& name, const std::string& text) { std::ofstream(folder_ / name) << text; }
    std::string content(const std::string& name) const {
        std::ifstream in(folder_ / name);
        return {std::istreambuf_iterator<char>(in), {}};
    }
    /// Runs it in the folder; what it says on standard error goes to `said_`.
    int run(const std::string& arguments) {
        const std::string command =
            "cd '" + folder_.string() + "' && '" PITHWARD_PROGRAM "' convert " + arguments + " > out.log 2> said.log";
        const int status = std::system(command.c_str());
        said_ = content("said.log");
        EXPECT_EQ(content("out.log"), "");
        return WEXITSTATUS(status);
    }
    bool said(const std::string& words) const { return said_.find(words) != std::string::npos; }
    /// An error is one line.
    bool one_line() const { return said_.find('\n') == said_.size() - 1; }

    fs::path folder_ = fs::path(testing::TempDir()) / ("pithward \xC3\xA5r " + std::to_string(::getpid()));
    std::string said_;
};

TEST_F(Convert, GoesRoundThroughEveryFormat) {
    ASSERT_EQ(run("plain.rwl 'a b.csv'"), 0) << said_;
    EXPECT_EQ(content("a b.csv"), "year,A\n1990,1.00\n1991,0.00\n1992,\n1993,1.02\n");
    ASSERT_EQ(run("'a b.csv' c.json"), 0) << said_;
    ASSERT_EQ(run("c.json d.txt --quiet"), 0) << said_;
    EXPECT_EQ(said_, "");
    ASSERT_EQ(run("d.txt e.rwl"), 0) << said_;
    EXPECT_EQ(content("e.rwl"), content("plain.rwl"));
}

TEST_F(Convert, SaysWhatItNoticedUnlessQuiet) {
    EXPECT_EQ(run("odd.rwl a.csv"), 0);
    EXPECT_TRUE(said("odd.rwl: line 2: series A goes on after an end mark"));
    EXPECT_EQ(run("odd.rwl b.csv --quiet"), 0);
    EXPECT_EQ(said_, "");
    EXPECT_EQ(run("odd.rwl c.csv --strict"), 1);
    EXPECT_EQ(run("plain.rwl d.csv --strict"), 0);
}

TEST_F(Convert, WritesOverNothingWithoutForce) {
    put("a.csv", "mine");
    EXPECT_EQ(run("plain.rwl a.csv"), 2);
    EXPECT_TRUE(said("a.csv: this file exists already") && said("--force") && one_line()) << said_;
    EXPECT_EQ(content("a.csv"), "mine");
    EXPECT_EQ(run("plain.rwl a.csv --force"), 0);
    EXPECT_NE(content("a.csv"), "mine");
}

TEST_F(Convert, RefusesBadInputInOneLineAndWritesNothing) {
    put("bad.rwl", "A       1990   1x0   999\n");
    EXPECT_EQ(run("bad.rwl a.csv"), 2);
    EXPECT_TRUE(said("bad.rwl, line 1, column 13: '1x0' is no value") && one_line()) << said_;
    EXPECT_FALSE(fs::exists(folder_ / "a.csv"));
    EXPECT_EQ(run("none.rwl a.csv"), 2);
    EXPECT_TRUE(said("none.rwl: the file can't be opened") && one_line()) << said_;
    EXPECT_EQ(run("plain.rwl a.doc"), 2);
    EXPECT_TRUE(said("a.doc: its ending names no series format") && one_line()) << said_;
    EXPECT_EQ(run("plain.rwl"), 2);
    EXPECT_TRUE(one_line()) << said_;
}

} // namespace
