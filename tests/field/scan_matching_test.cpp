// Which scan belongs to which core: by the sheet, by name, by the code on the mount; and what only a person can tell.
#include "libcore/field/core_code.h"
#include "libcore/field/scan_matching.h"

#include <gtest/gtest.h>

#include <map>

namespace pithward::field {
namespace {

const std::string mill = "M\xC3\xBChle";
const std::string hebrew = "\xD7\xA2\xD7\xA5";

TEST(CoreCode, GivesItsNamesBack) {
    std::string twice = hebrew;
    twice.append("/").append(hebrew);
    for (const CodeNames& names : {CodeNames{"HW", "HW01A"},
                                   {"Hill/North", "1/2"},
                                   {"50%", "%2F"},
                                   {"/", "%"},
                                   {mill, hebrew},
                                   {twice, mill},
                                   {"a%25", "b%2fc"}}) {
        EXPECT_EQ(names_in_code(core_code(names)), names) << core_code(names);
    }
    EXPECT_EQ(core_code({"HW", "HW01A"}), "HW/HW01A") << "labels of before stay right";
    EXPECT_NE(core_code({"a/b", "c"}), core_code({"a", "b/c"}));
    for (const char* other : {"", "/", "HW/", "/HW01A", "HW01A", "https://a.example/b", "a/b/c"}) {
        EXPECT_FALSE(names_in_code(other)) << other;
    }
}

TEST(ScanPlace, ThereAndBack) {
    for (const char* text : {"1", "12", "0 0", "1204 388"}) {
        const auto place = scan_place_from(text);
        ASSERT_TRUE(place) << text;
        EXPECT_EQ(text_of(*place), text);
    }
    for (const char* text : {"", "0", "-1", "top", "1,5", "1 2 3", "99999999999", "4x", "1204 -3"}) {
        EXPECT_FALSE(scan_place_from(text)) << text;
    }
}

struct Matching : testing::Test {
    std::vector<CoreToMatch> cores;
    std::vector<std::string> scans;
    std::map<std::string, std::vector<ReadCode>> codes;
    std::map<std::string, int> asked;

    void core(const std::string& id, const std::string& scan = {}, std::optional<ScanPlace> place = {},
              const std::string& site = "HW") {
        cores.push_back({site, id, scan, place});
    }
    ScanMatching match() {
        return match_scans(cores, scans, [this](const std::string& scan) {
            ++asked[scan];
            return codes[scan];
        });
    }
};

TEST_F(Matching, TheSheetFirstThenTheNameThenTheCode) {
    core("A", "tray 7.tif");
    core("B");
    core("C");
    core("D");
    scans = {"B.tif", "img_0001.tif", "tray 7.tif", "unknown.tif"};
    codes["img_0001.tif"] = {{"HW/C", {100, 200}}};
    codes["tray 7.tif"] = {{"HW/D", {1, 2}}};
    const auto found = match();
    EXPECT_EQ(found.cores[0].scan, "tray 7.tif");
    EXPECT_EQ(found.cores[1].scan, "B.tif");
    EXPECT_EQ(found.cores[2].scan, "img_0001.tif");
    EXPECT_TRUE(found.cores[2].by_code);
    EXPECT_EQ(found.cores[3], ScanMatch{}) << "what the sheet settles is not looked at for codes";
    EXPECT_EQ(found.left, (std::vector<ScanLeft>{{"unknown.tif", {}}}));
    EXPECT_EQ(asked, (std::map<std::string, int>{{"img_0001.tif", 1}, {"unknown.tif", 1}}));
}

TEST_F(Matching, SeveralOnAScanByTheOrderOfTheSheet) {
    core("A1", "tray.tif");
    core("B1", "tray.tif");
    core("A2", "tray.tif");
    scans = {"tray.tif"};
    const auto found = match();
    for (int i = 0; i < 3; ++i) {
        EXPECT_EQ(found.cores[static_cast<std::size_t>(i)].place, ScanPlace(i + 1));
    }
    EXPECT_TRUE(found.left.empty());
}

TEST_F(Matching, SeveralOnAScanByTheirCodes) {
    core("A");
    core("B");
    scans = {"img.tif"};
    codes["img.tif"] = {{"HW/B", {10, 20}}, {"HW/A", {10, 400}}, {"https://a.example/x", {5, 5}}};
    const auto found = match();
    EXPECT_EQ(found.cores[0].place, ScanPlace(ImagePoint{10, 400}));
    EXPECT_EQ(found.cores[1].place, ScanPlace(ImagePoint{10, 20}));
    // The same where the sheet names the scan; where one of them has no code, the order tells.
    cores[0].scan = cores[1].scan = "img.tif";
    EXPECT_EQ(match().cores[0].place, ScanPlace(ImagePoint{10, 400}));
    core("C", "img.tif");
    EXPECT_EQ(match().cores[0].place, ScanPlace(1));
    // What the sheet tells holds.
    cores[0].place = ScanPlace(3);
    EXPECT_EQ(match().cores[0].place, ScanPlace(3));
    EXPECT_EQ(match().cores[1].place, std::nullopt) << "not guessed beside it";
}

TEST_F(Matching, WhatTwoClaimIsNobodys) {
    core("A");
    core("B");
    core("C");
    core("C", {}, {}, "Hill");
    scans = {"A.jpg", "A.tif", "C.tif", "x.tif", "y.tif"};
    codes["x.tif"] = {{"HW/B", {1, 1}}};
    codes["y.tif"] = {{"HW/B", {1, 1}}};
    auto found = match();
    EXPECT_EQ(found.cores[0].rivals, (std::vector<std::string>{"A.jpg", "A.tif"}));
    EXPECT_EQ(found.cores[1].rivals, (std::vector<std::string>{"x.tif", "y.tif"}));
    for (const ScanMatch& one : found.cores) {
        EXPECT_TRUE(one.scan.empty());
    }
    ASSERT_EQ(found.left.size(), 5U);
    EXPECT_EQ(found.left[2].says, (std::vector<std::string>{"HW/C", "Hill/C"})) << "the name of two cores";
    // The code on the mount tells which of two sites is meant.
    codes["C.tif"] = {{"Hill/C", {1, 1}}};
    found = match();
    EXPECT_EQ(found.cores[3].scan, "C.tif");
    EXPECT_TRUE(found.cores[2].scan.empty());
}

TEST_F(Matching, AScanWhoseCoreHasOneIsLeftWithWhatItSays) {
    core("A");
    scans = {"A.tif", "again.tif"};
    codes["again.tif"] = {{"HW/A", {1, 1}}};
    const auto found = match();
    EXPECT_EQ(found.cores[0].scan, "A.tif");
    EXPECT_EQ(found.left, (std::vector<ScanLeft>{{"again.tif", {"HW/A"}}}));
}

TEST_F(Matching, AFormerCodeThatMayMeanTwoMeansNone) {
    core("c", {}, {}, "a/b");
    scans = {"x.tif"};
    codes["x.tif"] = {{"a/b/c", {1, 1}}};
    EXPECT_EQ(match().cores[0].scan, "x.tif");
    core("b/c", {}, {}, "a");
    EXPECT_TRUE(match().cores[0].scan.empty());
}

} // namespace
} // namespace pithward::field
