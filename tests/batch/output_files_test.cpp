#include "app/batch/output_files.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>

namespace pithward::batch {
namespace {

using test::TemporaryFolder;

std::string refusal(const std::vector<OutputFile>& outputs, bool force = false,
                    const std::vector<std::string>& inputs = {}) {
    const auto checked = check_outputs(outputs, inputs, force);
    return checked ? "" : checked.error().line();
}

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

TEST(OutputFiles, WhatCanBeWrittenIsFreeAndNothingIsMade) {
    const TemporaryFolder folder;
    EXPECT_EQ(refusal({{"--json", folder.file("a.json")}, {"--csv", "-"}, {"--overlay", ""}}), "");
    EXPECT_FALSE(std::filesystem::exists(folder.file("a.json")));
}

TEST(OutputFiles, AFileThatIsThereNeedsForce) {
    const TemporaryFolder folder;
    const std::string there = folder.write("there.csv", "old");
    EXPECT_TRUE(has(refusal({{"--json", folder.file("a.json")}, {"--csv", there}}), "there.csv: this file exists"));
    EXPECT_EQ(refusal({{"--csv", there}}, true), "");
}

TEST(OutputFiles, AFolderMustBeThereAndWritable) {
    const TemporaryFolder folder;
    EXPECT_TRUE(has(refusal({{"--csv", folder.file("missing/a.csv")}}), "there is no folder"));
    std::filesystem::create_directory(folder.file("shut"));
    ASSERT_EQ(::chmod(folder.file("shut").c_str(), 0500), 0);
    if (::access(folder.file("shut").c_str(), W_OK) != 0) { // whoever may write everywhere can't see this
        EXPECT_TRUE(has(refusal({{"--csv", folder.file("shut/a.csv")}}), "can't be written to"));
    }
}

TEST(OutputFiles, TwoOutputsCantShareAPlace) {
    const TemporaryFolder folder;
    const std::string line = refusal({{"--json", folder.file("a.out")}, {"--csv", folder.file("./a.out")}});
    EXPECT_TRUE(has(line, "--json and --csv name the same file")) << line;
    ASSERT_FALSE(folder.write("a.out", "old").empty());
    std::filesystem::create_symlink(folder.file("a.out"), folder.file("link.out"));
    EXPECT_TRUE(
        has(refusal({{"--json", folder.file("a.out")}, {"--csv", folder.file("link.out")}}, true), "same file"));
    EXPECT_TRUE(has(refusal({{"--json", "-"}, {"--csv", "-"}}), "--json and --csv: both go to standard output"));
}

TEST(OutputFiles, AnInputIsNeverReplaced) {
    const TemporaryFolder folder;
    const std::string scan = folder.write("scan.tif", "pixels");
    EXPECT_TRUE(has(refusal({{"--json", scan}}, true, {scan}), "this is the file that is read"));
}

TEST(OutputFiles, APictureDoesNotGoToStandardOutput) {
    EXPECT_TRUE(has(refusal({{"--overlay", "-", false}}), "--overlay"));
}

TEST(OutputFiles, BytesGoWhereTheyWereMeantTo) {
    const TemporaryFolder folder;
    testing::internal::CaptureStdout();
    const std::vector<OutputBytes> outputs{{folder.file("a.csv"), "year,A\n"}, {"-", "{}\n"}};
    const auto written = write_outputs(outputs, false);
    EXPECT_EQ(testing::internal::GetCapturedStdout(), "{}\n");
    ASSERT_TRUE(written.has_value()) << written.error().line();
    EXPECT_EQ(test::bytes_of(folder.file("a.csv")), "year,A\n");
}

} // namespace
} // namespace pithward::batch
