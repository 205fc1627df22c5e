// A whole session on cores of the demo site: a technician has them measured and answers the findings, a supervisor
// passes most of them and returns two, the technician answers again, the supervisor passes, and the export is held
// against the truth.
#include "libcore/edit/boundary_edits.h"
#include "libcore/edit/finding_edits.h"
#include "libcore/formats/series_formats.h"
#include "libcore/record/project.h"
#include "libcore/review/queue.h"
#include "libcore/review/verdicts.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <sys/wait.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>

namespace pithward::test {
namespace {

namespace fs = std::filesystem;
using record::Project;

const std::vector<std::string> session_cores{"HW01A", "HW01B", "HW02A", "HW05A"};

/// What the renderer of the demo site says of a core.
struct DemoTruth {
    std::vector<ImagePoint> visible;
    std::map<int, double> widths_mm; ///< Of rings between two boundaries that can be seen.
};

DemoTruth demo_truth(const std::string& core) {
    std::ifstream in(fs::path(PITHWARD_DEMO) / (core + ".truth.json"));
    const auto json = nlohmann::json::parse(in);
    DemoTruth truth;
    std::map<int, bool> seen;
    for (const auto& boundary : json.at("boundaries")) {
        seen[boundary.at("year")] = boundary.at("visible");
        if (boundary.at("visible")) {
            truth.visible.push_back({boundary.at("x"), boundary.at("y")});
        }
    }
    for (const auto& ring : json.at("widths")) {
        const int year = ring.at("year");
        if (seen[year] && seen.contains(year - 1) && seen[year - 1]) {
            truth.widths_mm[year] = ring.at("radial_mm");
        }
    }
    return truth;
}

bool is_near_any(const std::vector<ImagePoint>& places, ImagePoint at) {
    constexpr double near_px = 6.0; // 0.13 mm at the demo's 1200 dpi
    return std::ranges::any_of(places,
                               [&](ImagePoint one) { return std::hypot(one.x - at.x, one.y - at.y) < near_px; });
}

struct Session : testing::Test {
    TemporaryFolder folder;
    std::string file = folder.file("hill.pithward");

    void SetUp() override {
        fs::create_directory(folder.file("scans"));
        std::ifstream sheet(fs::path(PITHWARD_DEMO) / "field-sheet.csv");
        std::ofstream kept(folder.file("sheet.csv"));
        for (std::string line; std::getline(sheet, line);) {
            const bool wanted = line.starts_with("site,") || std::ranges::any_of(session_cores, [&](const auto& core) {
                                    return line.find("," + core + ",") != std::string::npos;
                                });
            kept << (wanted ? line + "\n" : "");
        }
        for (const std::string& core : session_cores) {
            fs::copy_file(fs::path(PITHWARD_DEMO) / (core + ".jpg"), folder.file("scans/" + core + ".jpg"));
        }
    }
    int run(const std::string& arguments) {
        const std::string command =
            "cd '" + folder.file("") + "' && '" PITHWARD_PROGRAM "' " + arguments + " > out.log 2> said.log";
        const int status = std::system(command.c_str());
        return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }
    std::string out() { return bytes_of(folder.file("out.log")); }
    std::string said() { return bytes_of(folder.file("said.log")); }

    Project project() { return Project::open(file, Project::Access::Write).value(); }
    static std::vector<Reading> readings(const Project& project) {
        const auto entries = project.readings().value();
        std::vector<Reading> all;
        all.reserve(entries.size());
        for (const record::ReadingEntry& entry : entries) {
            all.push_back(project.reading(entry.id).value());
        }
        return all;
    }
    static void make(Project& project, ReadingId id, const Outcome<Edit>& edit, const std::string& who) {
        ASSERT_TRUE(edit.has_value()) << edit.error().line();
        const auto made = project.edit(id, *edit, {who, record::utc_now(), "0.1.0"});
        ASSERT_TRUE(made.has_value()) << made.error().line();
    }
    /// Answers a finding as the truth has it.
    static void answer(Project& project, const review::Waiting& waiting) {
        const Document document = project.document(waiting.reading).value();
        const Reading& reading = document.reading();
        const DemoTruth truth = demo_truth(reading.core);
        const auto finding = std::ranges::find(reading.findings, waiting.finding, &Finding::id);
        auto state = Finding::State::KeptAsItIs;
        if (const auto* proposed = std::get_if<ProposeBoundary>(&finding->change)) {
            const bool there = is_near_any(truth.visible, proposed->boundary.at);
            state = there ? Finding::State::ProposalTaken : state;
        } else if (const auto* removal = std::get_if<ProposeRemoval>(&finding->change)) {
            const auto boundary = std::ranges::find(reading.boundaries, removal->boundary, &Boundary::id);
            const bool there = boundary != reading.boundaries.end() && is_near_any(truth.visible, boundary->at);
            state = there ? state : Finding::State::ProposalTaken;
        }
        make(project, waiting.reading, settle_finding(reading, waiting.finding, state, "", document.fresh_id()), "Ida");
    }
    static void answer_all_and_mark(Project& project) {
        for (const review::Waiting& waiting : review::analysts_list(readings(project))) {
            answer(project, waiting);
        }
        for (const Reading& reading : readings(project)) {
            if (reading.state == Reading::State::Proposed || reading.state == Reading::State::Returned) {
                make(project, reading.id, confirm_above(reading, 0.9), "Ida");
                make(project, reading.id, review::mark(project.reading(reading.id).value(), "Ida"), "Ida");
            }
        }
    }
    static int pass_what_can_be_passed(Project& project) {
        int passed = 0;
        for (const Reading& reading : readings(project)) {
            const Document document = project.document(reading.id).value();
            if (const auto edit = review::pass(reading, document.log(), "Sue"); edit) {
                make(project, reading.id, edit, "Sue");
                ++passed;
            }
        }
        return passed;
    }
};

TEST_F(Session, FromTheScansToAPassedExport) {
    ASSERT_EQ(run("create hill.pithward --sheet sheet.csv --scans scans --by Ida"), 0) << said();
    ASSERT_EQ(run("measure hill.pithward --by Ida"), 0) << said();
    EXPECT_EQ(run("export hill.pithward --only passed --csv a.csv"), 2);
    EXPECT_NE(said().find("no reading is passed"), std::string::npos) << said();
    EXPECT_FALSE(fs::exists(folder.file("a.csv")));
    {
        Project kept = project();
        answer_all_and_mark(kept);
        EXPECT_TRUE(review::analysts_list(readings(kept)).empty());
        const auto queue = review::supervisors_queue(readings(kept));
        ASSERT_GE(queue.size(), 4U);
        EXPECT_TRUE(std::ranges::is_sorted(queue, std::ranges::greater(), &review::Waiting::rings_at_stake));
        // The supervisor returns the two worst and passes the others.
        for (std::size_t i = 0; i < queue.size(); ++i) {
            const Reading reading = kept.reading(queue[i].reading).value();
            make(kept, queue[i].reading,
                 review::judge(reading, queue[i].finding, i < 2 ? Verdict::Returned : Verdict::Passed,
                               i < 2 ? "look again" : ""),
                 "Sue");
        }
        EXPECT_EQ(review::analysts_list(readings(kept)).size(), 2U);
        const int passed = pass_what_can_be_passed(kept);
        EXPECT_GE(passed, 2);
        EXPECT_LT(passed, 4);
    }
    ASSERT_EQ(run("export hill.pithward --only passed --csv a.csv"), 0) << said();
    EXPECT_NE(said().find("not passed, 0 without a reading"), std::string::npos) << said();
    {
        Project kept = project();
        answer_all_and_mark(kept);
        pass_what_can_be_passed(kept);
        for (const Reading& reading : readings(kept)) {
            EXPECT_EQ(reading.state, Reading::State::Passed) << reading.core;
        }
    }
    ASSERT_EQ(
        run("export hill.pithward --only passed --force --csv a.csv --decadal a.rwl --template a.txt --json a.json"), 0)
        << said();

    // Every export says how much was looked at, confirmed in bulk, passed, and by whom.
    for (const char* name : {"a.csv", "a.rwl", "a.txt", "a.json"}) {
        const std::string text = bytes_of(folder.file(name));
        for (const char* words : {"project hill.pithward, readings that are passed", " looked at, ",
                                  " confirmed in bulk", "4 passed", "marked by Ida 4; passed by Sue 4"}) {
            EXPECT_NE(text.find(words), std::string::npos) << name << ": " << words;
        }
    }
    // What is exported is the truth where that can be seen.
    const WidthTable table = read_series_file(folder.file("a.rwl")).value();
    ASSERT_EQ(table.series.size(), session_cores.size());
    for (const WidthSeries& series : table.series) {
        const DemoTruth truth = demo_truth(series.id);
        ASSERT_GT(truth.widths_mm.size(), 50U);
        double squares = 0.0;
        for (const auto& [year, width] : truth.widths_mm) {
            const int index = Year(year) - series.first_year;
            ASSERT_TRUE(index >= 0 && index < std::ssize(series.widths)) << series.id << ", " << year;
            const auto& measured = series.widths[static_cast<std::size_t>(index)];
            ASSERT_TRUE(measured.has_value()) << series.id << ", " << year;
            EXPECT_NEAR(measured->value(), width, 0.15) << series.id << ", " << year;
            squares += (measured->value() - width) * (measured->value() - width);
        }
        EXPECT_LT(std::sqrt(squares / static_cast<double>(truth.widths_mm.size())), 0.03) << series.id;
    }
    // The history tells it all.
    ASSERT_EQ(run("history hill.pithward"), 0);
    for (const char* words : {"Make the project", "Propose a reading, its outermost ring of 2023 by the field sheet",
                              "Confirm ring boundaries in bulk", "Set the reading to marked", "Return a finding",
                              "Pass a finding", "Pass the reading"}) {
        EXPECT_NE(out().find(words), std::string::npos) << words << "\n" << out();
    }
}

} // namespace
} // namespace pithward::test
