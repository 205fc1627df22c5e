// The report of a project, by the command as a process, on cores of the demo site.
#include "tests/report/text_of.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <sys/wait.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>

namespace pithward::test {
namespace {

namespace fs = std::filesystem;

struct ReportCommand : testing::Test {
    TemporaryFolder folder;

    int run(const std::string& arguments) {
        const std::string command = "cd '" + folder.file("") + "' && env -u DISPLAY USER=Ida '" PITHWARD_PROGRAM "' " +
                                    arguments + " > out.log 2> said.log";
        const int status = std::system(command.c_str());
        return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }
    std::string said() { return bytes_of(folder.file("said.log")); }
    std::string html() { return bytes_of(folder.file("r.html")); }

    /// Two trees of the demo site, one of them with a core that has no scan; the notes are hostile.
    void SetUp() override {
        for (const char* core : {"HW01A", "HW02A"}) {
            fs::copy_file(fs::path(PITHWARD_DEMO) / (std::string(core) + ".jpg"),
                          folder.file(std::string(core) + ".jpg"));
        }
        (void)folder.write(
            "sheet.csv",
            "site,tree,core,species,wood,date_cored,status,dbh_cm,outer,scan,latitude,collector,notes\n"
            "HW,HW01,HW01A,<b>Pinus</b> & sp.,conifer,2023-10-04,living,25.5,complete,HW01A.jpg,47.5,"
            "Ida,\"<script>alert(1)</script> \xD7\xA2\xD7\xA5\"\n"
            "HW,HW02,HW02A,<b>Pinus</b> & sp.,conifer,2023-10-04,living,25.5,complete,HW02A.jpg,47.5,Ida,\n"
            "HW,HW02,HW02Z,<b>Pinus</b> & sp.,conifer,2023-10-04,living,25.5,complete,,47.5,Ida,\n");
        ASSERT_EQ(run("create hw.pithward --sheet sheet.csv --scans ."), 0) << said();
    }
};

TEST_F(ReportCommand, BothFormsTellTheSameAndWhatTheExportTells) {
    EXPECT_EQ(run("report hw.pithward --out r.pdf"), 2) << "nothing is read yet";
    EXPECT_NE(said().find("run pithward measure"), std::string::npos) << said();
    ASSERT_EQ(run("measure hw.pithward --quiet HW01A HW02A"), 0) << said();
    ASSERT_EQ(run("report hw.pithward --out r.pdf --out r.html --quiet --to-height 8,3"), 0) << said();
    EXPECT_EQ(said(), "");
    ASSERT_EQ(run("export hw.pithward --json all.json --quiet"), 0) << said();

    const std::string in_html = without_blanks(text_of_html(html()));
    const auto pdf = text_of_pdf(bytes_of(folder.file("r.pdf")));
    const std::string in_pdf = pdf ? without_blanks(*pdf) : in_html;
    const auto json = nlohmann::json::parse(bytes_of(folder.file("all.json")));
    ASSERT_EQ(json.at("readings").size(), 2U);
    for (const auto& reading : json.at("readings")) {
        // Ten neighbouring widths as a row of the table shows them.
        std::string row = "1990";
        for (int year = 1990; year < 2000; ++year) {
            for (const auto& ring : reading.at("rings")) {
                if (ring.at("year") == year) {
                    std::array<char, 32> text{};
                    std::snprintf(text.data(), text.size(), "%.3f", ring.at("width_mm").get<double>());
                    row += text.data();
                }
            }
        }
        EXPECT_EQ(row.size(), 54U);
        EXPECT_NE(in_html.find(row), std::string::npos) << row;
        EXPECT_NE(in_pdf.find(row), std::string::npos) << row;
    }
    for (const char* words : {"Thiscorehasnoscan", "<script>alert(1)</script>", "<b>Pinus</b>&sp.",
                              "8\xC2\xB1"
                              "3.0"}) {
        EXPECT_NE(in_html.find(words), std::string::npos) << words;
        EXPECT_NE(in_pdf.find(words), std::string::npos) << words;
    }
    EXPECT_EQ(html().find("<script"), std::string::npos);
    EXPECT_EQ(html().find("<b>"), std::string::npos);
    EXPECT_NE(html().find("data:image/jpeg;base64,"), std::string::npos);
    if (!pdf) {
        GTEST_SKIP() << "pdftotext is not on this machine: the PDF was not read";
    }
}

TEST_F(ReportCommand, AClimateSeriesJoinsTheReport) {
    ASSERT_EQ(run("measure hw.pithward --quiet HW01A HW02A"), 0) << said();
    std::string climate = "year,month,value\n";
    for (int year = 1930; year <= 2023; ++year) {
        for (int month = 1; month <= 12; ++month) {
            climate +=
                std::to_string(year) + ',' + std::to_string(month) + ',' + std::to_string(year * month % 17) + '\n';
        }
    }
    (void)folder.write("climate.csv", climate);
    ASSERT_EQ(run("report hw.pithward --out r.html --climate climate.csv --quiet"), 0) << said();
    const std::string text = without_blanks(text_of_html(html()));
    EXPECT_NE(text.find("Heldagainstclimate.csv"), std::string::npos);
    EXPECT_NE(text.find("48correlationsweretried"), std::string::npos);
    EXPECT_NE(text.find("meangrowthbycalendaryear"), std::string::npos);
    (void)folder.write("climate.csv", "warm and wet");
    EXPECT_EQ(run("report hw.pithward --out r.html --climate climate.csv --force"), 2);
    EXPECT_EQ(std::ranges::count(said(), '\n'), 1) << said();
    EXPECT_EQ(run("report hw.pithward --out r.html --climate r.html --force"), 2) << "the file that is read";
}

TEST_F(ReportCommand, NothingIsWrittenOverAndNothingHalf) {
    for (const char* arguments : {"--out r.txt", "--out r", "--out -", "--out r.pdf --out r.pdf", "--out no/r.pdf",
                                  "--out r.pdf --out hw.html/r.html", "--out \"\"", ""}) {
        EXPECT_EQ(run(std::string("report hw.pithward ") + arguments), 2) << arguments;
        EXPECT_EQ(std::ranges::count(said(), '\n'), 1) << arguments << "\n" << said();
        EXPECT_FALSE(fs::exists(folder.file("r.pdf"))) << arguments;
    }
    ASSERT_EQ(run("measure hw.pithward --quiet HW01A"), 0) << said();
    (void)folder.write("r.html", "mine");
    EXPECT_EQ(run("report hw.pithward --out r.pdf --out r.html"), 2);
    EXPECT_EQ(html(), "mine");
    EXPECT_FALSE(fs::exists(folder.file("r.pdf")));
    EXPECT_EQ(run("report hw.pithward --out r.html --force --strict"), 1) << "findings are open";
    EXPECT_TRUE(html().starts_with("<!DOCTYPE html>"));
    EXPECT_TRUE(html().ends_with("</html>\n"));
}

TEST_F(ReportCommand, AScanThatIsGoneOrAnotherIsToldAndNotShown) {
    ASSERT_EQ(run("measure hw.pithward --quiet HW01A HW02A"), 0) << said();
    fs::remove(folder.file("HW01A.jpg"));
    (void)folder.write("HW01A.jpg", bytes_of(folder.file("HW02A.jpg")) + "\n"); // a picture, but another one
    fs::remove(folder.file("HW02A.jpg"));
    (void)folder.write("HW02A.jpg", "no picture");
    ASSERT_EQ(run("report hw.pithward --out r.html --quiet"), 0) << said();
    EXPECT_NE(said().find("HW01A has no picture in the report"), std::string::npos) << said();
    const std::string text = without_blanks(text_of_html(html()));
    EXPECT_NE(text.find("otherbytesthanmeasured"), std::string::npos);
    EXPECT_NE(text.find("2scansarenotthefilethatwasmeasured"), std::string::npos) << text;
    EXPECT_EQ(html().find("data:image/jpeg"), std::string::npos);
}

} // namespace
} // namespace pithward::test
