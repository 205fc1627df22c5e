#include "app/report/paper/html_writer.h"
#include "app/report/site/figures_in_words.h"
#include "app/report/site/site_document.h"
#include "libcore/measure/measure.h"
#include "tests/measure/straight_reading.h"
#include "tests/report/text_of.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <clocale>

namespace pithward::report {
namespace {

Finding a_finding() {
    Finding finding;
    finding.id = FindingId{1};
    finding.at = test::on_straight_path(12.0);
    finding.reason = "this boundary may be none";
    finding.proposal = "take it out";
    finding.probability = 0.25;
    finding.state = Finding::State::KeptAsItIs;
    finding.comment = "clear under the microscope";
    finding.verdict = Verdict::Passed;
    return finding;
}

/// A core with widths of 1, 2, 3, 4, an absent ring, and a gap of lost wood.
CoreRecord measured_core(const std::string& name) {
    CoreRecord core;
    core.name = name;
    core.entry.site.id = "Hill";
    core.entry.tree.id = "H01";
    core.entry.tree.species = "Pinus sp.";
    core.entry.core.id = name;
    Reading reading = test::straight_reading({10.0, 11.0, 13.0, 16.0, 20.0, 26.0});
    reading.last_year = Year(2020);
    reading.core = name;
    reading.absent_rings = {test::absent_at(3)};
    reading.breaks = {test::break_at(22.0, 24.0, Break::Kind::LostWood, 0)};
    reading.findings = {a_finding()};
    core.measured = MeasuredReading{reading, measure(reading).value(), {}, {}};
    core.standing.state = Reading::State::Marked;
    core.standing.marked_by = "Ida";
    core.standing.findings = 1;
    core.workers = {{"Ida", 3, "2024-05-01T10:00:00.000Z", "2024-05-02T10:00:00.000Z"}};
    core.pictures = {{"H01A.jpg", "", "its scan is not there"}};
    return core;
}

SiteRecord a_record() {
    SiteRecord record;
    record.project = "hill.pithward";
    record.version = "9.9.9";
    record.made_at = "2024-06-30T12:34:56.000Z";
    record.programs = {"9.9.8"};
    record.cores = {measured_core("H01A")};
    record.scans = {{{"H01A.jpg", 1234, "abcdef"}, ScanRecord::State::Other}};
    return record;
}

std::string shown(const SiteRecord& record) {
    return test::without_blanks(test::text_of_html(html_bytes(site_document(record))));
}

bool says(const std::string& text, const std::string& words) {
    return text.find(test::without_blanks(words)) != std::string::npos;
}

TEST(SiteDocument, TellsWhatIsNeededToRepeatTheWork) {
    const std::string text = shown(a_record());
    for (const char* words :
         {"Made by Pithward 9.9.9 on 2024-06-30 at 12:34 UTC", "done with Pithward 9.9.8", "abcdef",
          "50.000, 50.000 px/mm", "other bytes than measured", "Ida, 3 entries, 2024-05-01 to 2024-05-02"}) {
        EXPECT_TRUE(says(text, words)) << words << "\n" << text;
    }
}

TEST(SiteDocument, AWidthAZeroAndAGapAreThreeThings) {
    const Document document = site_document(a_record());
    std::vector<std::string> row;
    for (const Block& block : document.blocks) {
        const auto* table = std::get_if<Table>(&block);
        if (table != nullptr && table->caption.find("ring widths in mm by calendar year") != std::string::npos) {
            for (const auto& one : table->rows) {
                row.insert(row.end(), one.begin() + 1, one.end());
            }
        }
    }
    std::erase(row, "");
    // From the oldest: the ring that lost wood touches, then 4, 3, the ring that was not laid, 2, 1.
    const std::vector<std::string> expected{not_known, "4.000", "3.000", "0.000", "2.000", "1.000"};
    EXPECT_EQ(row, expected);
}

TEST(SiteDocument, FindingsAreToldWithTheirVerdicts) {
    const std::string text = shown(a_record());
    EXPECT_TRUE(
        says(text, "this boundary may be none take it out 0.25 kept as it is passed clear under the microscope"))
        << text;
}

TEST(SiteDocument, SaysWhatIsProvisionalBeforeAnyNumber) {
    const Document document = site_document(a_record());
    const auto caution = std::ranges::find_if(document.blocks, [](const Block& block) {
        const auto* paragraph = std::get_if<Paragraph>(&block);
        return paragraph != nullptr && paragraph->caution &&
               paragraph->text.starts_with("1 reading has not been passed");
    });
    const auto table =
        std::ranges::find_if(document.blocks, [](const Block& block) { return std::holds_alternative<Table>(block); });
    EXPECT_LT(caution - document.blocks.begin(), table - document.blocks.begin());
    EXPECT_TRUE(says(shown(a_record()), "1 scan is not the file that was measured"));

    SiteRecord passed = a_record();
    passed.cores[0].standing.state = Reading::State::Passed;
    EXPECT_FALSE(says(shown(passed), "not been passed by a second person. What"));
}

TEST(SiteDocument, CoresThatCantBeShownAreTold) {
    SiteRecord record = a_record();
    CoreRecord none;
    none.name = "H02A";
    none.not_measured = "This core has no scan";
    record.cores.push_back(none);
    const std::string text = shown(record);
    EXPECT_TRUE(says(text, "This core has no scan."));
    EXPECT_TRUE(says(text, "No picture of H01A: its scan is not there."));
}

TEST(SiteDocument, ASiteWithoutADatedCoreStillHasAReport) {
    SiteRecord record = a_record();
    Reading& reading = record.cores[0].measured->reading;
    reading.last_year.reset();
    record.cores[0].measured->series = measure(reading).value();
    const std::string text = shown(record);
    EXPECT_TRUE(says(text, "none of them dated"));
    EXPECT_TRUE(says(text, "The series is undated: 1 is its innermost ring"));
    EXPECT_TRUE(says(shown(SiteRecord()), "0 cores"));
}

TEST(SiteDocument, NumbersAreTheSameInEveryLocale) {
    EXPECT_EQ(fixed(1234.5678, 2), "1234.57");
    EXPECT_EQ(fixed(-0.5, 1), "\xE2\x88\x92"
                              "0.5");
    EXPECT_EQ(fixed(-0.0001, 2), "0.00") << "no zero below zero";
    EXPECT_EQ(fixed(std::optional<double>(), 2), not_known);
    const std::string before = std::setlocale(LC_ALL, nullptr);
    if (std::setlocale(LC_ALL, "de_DE.UTF-8") != nullptr) {
        EXPECT_EQ(fixed(1.5, 1), "1.5");
    }
    std::setlocale(LC_ALL, before.c_str());
}

} // namespace
} // namespace pithward::report
