// Labels and field sheets, by the command as a process.
#include "tests/report/text_of.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>
#include <sys/wait.h>

#include <cstdlib>
#include <filesystem>

namespace pithward::test {
namespace {

namespace fs = std::filesystem;

struct LabelsCommand : testing::Test {
    TemporaryFolder folder;

    int run(const std::string& arguments) {
        const std::string command = "cd '" + folder.file("") + "' && env -u DISPLAY USER=Ida '" PITHWARD_PROGRAM "' " +
                                    arguments + " > out.log 2> said.log";
        const int status = std::system(command.c_str());
        return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }
    bool says(const std::string& words) { return bytes_of(folder.file("said.log")).find(words) != std::string::npos; }
    bool is_there(const std::string& name) { return fs::exists(folder.file(name)); }
    std::string text(const std::string& name) {
        return text_of_pdf(bytes_of(folder.file(name))).value_or("pdftotext is not on this machine");
    }

    void SetUp() override { (void)folder.write("sheet.csv", "site,tree,core\nHW,HW01,HW01A\n"); }
};

TEST_F(LabelsCommand, ASheetAndItsProjectGiveTheSameLabels) {
    ASSERT_EQ(run("labels sheet.csv --out a.pdf --field-sheet f.pdf --field-page p.pdf"), 0)
        << bytes_of(folder.file("said.log"));
    ASSERT_EQ(run("create hw.pithward --sheet sheet.csv"), 0) << bytes_of(folder.file("said.log"));
    ASSERT_EQ(run("labels hw.pithward --out b.pdf"), 0) << bytes_of(folder.file("said.log"));
    EXPECT_EQ(text("a.pdf"), text("b.pdf"));
    if (text_of_pdf(bytes_of(folder.file("a.pdf")))) {
        EXPECT_NE(text("a.pdf").find("HW01A"), std::string::npos);
        EXPECT_NE(text("f.pdf").find("HW01A"), std::string::npos);
        EXPECT_NE(text("p.pdf").find("Which side to core"), std::string::npos);
    }
}

TEST_F(LabelsCommand, NothingIsWrittenOverAndNothingByHalves) {
    (void)folder.write("there.pdf", "mine");
    EXPECT_EQ(run("labels sheet.csv --out a.pdf --field-sheet there.pdf"), 2);
    EXPECT_FALSE(is_there("a.pdf"));
    EXPECT_EQ(bytes_of(folder.file("there.pdf")), "mine");
    EXPECT_EQ(run("labels sheet.csv --out a.pdf --field-sheet a.pdf"), 2);
    EXPECT_EQ(run("labels sheet.csv --out a.png"), 2);
    EXPECT_TRUE(says(".pdf"));
    EXPECT_EQ(run("labels sheet.csv"), 2);
    EXPECT_TRUE(says("--field-sheet"));
    EXPECT_EQ(run("labels --out a.pdf"), 2);
    EXPECT_EQ(run("labels missing.csv --out a.pdf"), 2);
    EXPECT_FALSE(is_there("a.pdf"));
    EXPECT_EQ(run("labels sheet.csv --out there.pdf --force"), 0);
    EXPECT_TRUE(bytes_of(folder.file("there.pdf")).starts_with("%PDF-"));
}

TEST_F(LabelsCommand, AUsedSheetIsBegunInItsMiddle) {
    EXPECT_EQ(run("labels sheet.csv --out a.pdf --from-label 24"), 0) << bytes_of(folder.file("said.log"));
    EXPECT_NE(text("a.pdf"), "");
    for (const char* wrong : {"0", "25", "-1", "two"}) {
        EXPECT_EQ(run("labels sheet.csv --out b.pdf --from-label " + std::string(wrong)), 2) << wrong;
    }
    EXPECT_EQ(run("labels sheet.csv --field-sheet f.pdf --from-label 5"), 2);
    EXPECT_FALSE(is_there("b.pdf") || is_there("f.pdf"));
}

TEST_F(LabelsCommand, AnEmptyFieldSheetNeedsNoCores) {
    EXPECT_EQ(run("labels --field-sheet f.pdf"), 0) << bytes_of(folder.file("said.log"));
    EXPECT_TRUE(is_there("f.pdf"));
}

TEST_F(LabelsCommand, RowsLeftOutNeedAPersonWhereThatIsAsked) {
    (void)folder.write("bad.csv", "site,tree,core,dbh_cm\nHW,HW01,HW01A,thick\nHW,HW02,HW02A,25\n");
    EXPECT_EQ(run("labels bad.csv --out a.pdf"), 0);
    EXPECT_TRUE(says("left out"));
    EXPECT_EQ(run("labels bad.csv --out b.pdf --strict"), 1);
}

} // namespace
} // namespace pithward::test
