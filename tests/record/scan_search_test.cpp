#include "libcore/record/project.h"
#include "libcore/record/scan_entry.h"
#include "libcore/record/scan_search.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>

namespace pithward::record {
namespace {

namespace fs = std::filesystem;

struct ScanSearch : testing::Test {
    test::TemporaryFolder folder;
    std::vector<ScanEntry> scans;

    void SetUp() override {
        fs::create_directories(folder.file("home/trays/more"));
        fs::create_directories(folder.file("elsewhere"));
        (void)folder.write("home/trays/a.jpg", "the scan");
        (void)folder.write("home/trays/b.jpg", "an other"); // as long
        (void)folder.write("elsewhere/secret.jpg", "not named to the user");
        scans = {*scan_entry(folder.file("home/trays/a.jpg"), "trays/a.jpg")};
    }
    [[nodiscard]] Outcome<FoundScan> find(const std::string& path) const {
        return find_scan(folder.file("home"), path, scans);
    }
};

TEST_F(ScanSearch, AScanIsFoundWhereItIs) {
    EXPECT_FALSE(find("trays/a.jpg")->moved);
    EXPECT_EQ(find("trays/a.jpg")->file, real_place(folder.file("home/trays/a.jpg")));
}

TEST_F(ScanSearch, SeveralAreSummedInTheirOrder) {
    const std::vector<ScanToSum> files{{folder.file("home/trays/b.jpg"), "b"}, {folder.file("home/trays/a.jpg"), "a"}};
    const auto entries = scan_entries(files, {});
    ASSERT_TRUE(entries.has_value()) << entries.error().line();
    ASSERT_EQ(entries->size(), 2U);
    // sha256sum of coreutils
    EXPECT_EQ((*entries)[0], (ScanEntry{"b", 8, "2d711c42ad720f7484de4b43d1dfff9039025faa72e57c88e3004e5bf0f2d245"}));
    EXPECT_EQ((*entries)[1], (ScanEntry{"a", 8, "65caa906513a595809fba3fe6c0ebb346b67a92c3d3d42944296cebc90863064"}));

    const std::vector<ScanToSum> one_gone{files[0], {folder.file("home/trays/gone.jpg"), "gone"}};
    const auto refused = scan_entries(one_gone, {});
    ASSERT_FALSE(refused.has_value());
    EXPECT_NE(refused.error().where.find("gone.jpg"), std::string::npos);

    std::stop_source stop;
    stop.request_stop();
    Work stopped;
    stopped.stop = stop.get_token();
    EXPECT_FALSE(scan_entries(files, stopped).has_value());
}

TEST_F(ScanSearch, AMovedScanIsFoundByItsChecksum) {
    fs::rename(folder.file("home/trays/a.jpg"), folder.file("home/trays/more/renamed.jpg"));
    const auto found = find("trays/a.jpg");
    ASSERT_TRUE(found.has_value()) << found.error().line();
    EXPECT_TRUE(found->moved);
    EXPECT_EQ(found->file, folder.file("home/trays/more/renamed.jpg"));
}

TEST_F(ScanSearch, OneThatIsGoneIsToldAndNothingElseTaken) {
    fs::rename(folder.file("home/trays/a.jpg"), folder.file("elsewhere/a.jpg"));
    const auto found = find("trays/a.jpg");
    ASSERT_FALSE(found.has_value());
    EXPECT_NE(found.error().what.find("is not there"), std::string::npos);
}

TEST_F(ScanSearch, WhatLeadsOutsideIsShownAndNotFollowed) {
    fs::create_symlink(folder.file("elsewhere"), folder.file("home/link"));
    for (const std::string path : {"../elsewhere/secret.jpg", "link/secret.jpg", "trays/../../elsewhere/secret.jpg"}) {
        const auto found = find(path);
        ASSERT_FALSE(found.has_value()) << path;
        EXPECT_NE(found.error().what.find("outside of the project's folder"), std::string::npos) << path;
        EXPECT_NE(found.error().what.find("elsewhere/secret.jpg"), std::string::npos) << "it is shown where it leads";
    }
    EXPECT_FALSE(find("/etc/passwd").has_value());
    fs::create_symlink("b.jpg", folder.file("home/trays/c.jpg"));
    EXPECT_TRUE(find("trays/c.jpg").has_value()) << "a link within the folder is no harm";
}

TEST_F(ScanSearch, OnlyWhatIsNamedIsReadOutside) {
    const fs::path elsewhere = real_place(folder.file("elsewhere"));
    fs::create_directories(folder.file("elsewhere-too"));
    (void)folder.write("elsewhere-too/c.jpg", "not named either");
    const auto found = [&](const std::string& path, const fs::path& named) {
        return find_scan(folder.file("home"), path, scans, std::vector{named});
    };
    EXPECT_EQ(found("../elsewhere/secret.jpg", elsewhere)->file, elsewhere / "secret.jpg");
    EXPECT_TRUE(found((elsewhere / "secret.jpg").string(), elsewhere).has_value()) << "a whole path";
    EXPECT_TRUE(found("../elsewhere/secret.jpg", elsewhere / "secret.jpg").has_value()) << "one file alone";
    EXPECT_FALSE(found("../elsewhere-too/c.jpg", elsewhere).has_value()) << "a name that begins alike";
    EXPECT_FALSE(found("../elsewhere/../elsewhere-too/c.jpg", elsewhere).has_value());
    EXPECT_FALSE(found("../elsewhere/secret.jpg", elsewhere / "other.jpg").has_value());
    fs::create_symlink(folder.file("elsewhere-too"), folder.file("elsewhere/link"));
    EXPECT_FALSE(found("../elsewhere/link/c.jpg", elsewhere).has_value()) << "a link leads out of what is named";
}

TEST_F(ScanSearch, ALinkThatIsChangedAfterItWasAllowedIsNotFollowed) {
    const fs::path elsewhere = real_place(folder.file("elsewhere"));
    (void)folder.write("elsewhere/scan.jpg", "known");
    const fs::path link = folder.file("home/trays/link.jpg");
    fs::create_symlink(elsewhere / "scan.jpg", link);
    const fs::path place = place_outside(folder.file("home"), "trays/link.jpg").value();
    EXPECT_EQ(place, elsewhere / "scan.jpg") << "what is asked about is where it really leads to";
    EXPECT_EQ(find_scan(folder.file("home"), "trays/link.jpg", scans, std::vector{place})->file, place);
    fs::remove(link);
    fs::create_symlink(elsewhere / "secret.jpg", link);
    EXPECT_FALSE(find_scan(folder.file("home"), "trays/link.jpg", scans, std::vector{place}).has_value());
}

} // namespace
} // namespace pithward::record
