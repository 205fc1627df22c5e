// A whole session on cores of the demo site: they are measured in batch, a technician answers the findings in the
// window, a supervisor passes most of them there and returns two, the technician answers again, the supervisor passes,
// and the export is held against the truth.
#include "app/bench/panels/findings_list.h"
#include "app/bench/window/main_window.h"
#include "app/review/core_viewer.h"
#include "app/review/review_page.h"
#include "libcore/formats/series_formats.h"
#include "libcore/record/project.h"
#include "libcore/review/queue.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <sys/wait.h>

#include <QApplication>
#include <QTest>
#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <tuple>

namespace pithward::bench {
namespace {

namespace fs = std::filesystem;
using record::Project;

const std::vector<std::string> session_cores{"HW01A", "HW01B", "HW02A", "HW05A"};

/// What the renderer of the demo site says of a core.
struct VisibleTruth {
    std::vector<ImagePoint> visible;
    std::map<int, double> widths_mm; ///< Of rings between two boundaries that can be seen.
};

VisibleTruth visible_truth(const std::string& core) {
    std::ifstream in(fs::path(PITHWARD_DEMO) / (core + ".truth.json"));
    const auto json = nlohmann::json::parse(in);
    VisibleTruth truth;
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

struct ReviewSession : testing::Test {
    test::TemporaryFolder folder;
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
    std::string out() { return test::bytes_of(folder.file("out.log")); }
    std::string said() { return test::bytes_of(folder.file("said.log")); }

    std::vector<Reading> readings() {
        const Project project = Project::open(file, Project::Access::Read).value();
        const auto entries = project.readings().value();
        std::vector<Reading> all;
        all.reserve(entries.size());
        for (const record::ReadingEntry& entry : entries) {
            all.push_back(project.reading(entry.id).value());
        }
        return all;
    }

    /// A click of a key on what has the focus, as a hand does it.
    static void key(MainWindow& window, Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        window.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
        QCoreApplication::processEvents(); // what is enabled follows what was done
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus != nullptr ? focus : &window, key, with);
        QCoreApplication::processEvents();
    }
    /// Waits until nothing is under way: no scan on its way to the bench, no edit to the disk.
    static bool at_rest(MainWindow& window) {
        constexpr int patience_ms = 60'000; // a scan is opened and looked over
        return QTest::qWaitFor(
            [&] {
                return !window.control().jobs().busy() && !window.pith().busy() && window.desk().waiting() == 0 &&
                       window.control().model().core() != nullptr;
            },
            patience_ms);
    }
    void open(MainWindow& window, const std::string& who) {
        window.resize(1400, 900);
        window.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
        window.control().model().set_person(who);
        window.control().open({QString::fromStdString(file)});
        ASSERT_TRUE(QTest::qWaitFor([&] { return window.control().model().core() != nullptr; }, 60'000));
        ASSERT_TRUE(at_rest(window));
    }

    /// What a person sees of a finding, as the truth has it: whether the proposal is right.
    static bool is_right(const Reading& reading, const Finding& finding) {
        const VisibleTruth truth = visible_truth(reading.core);
        if (const auto* proposed = std::get_if<ProposeBoundary>(&finding.change)) {
            return is_near_any(truth.visible, proposed->boundary.at);
        }
        if (const auto* removal = std::get_if<ProposeRemoval>(&finding.change)) {
            const auto boundary = std::ranges::find(reading.boundaries, removal->boundary, &Boundary::id);
            return boundary != reading.boundaries.end() && !is_near_any(truth.visible, boundary->at);
        }
        return false;
    }
    /// The technician goes through the findings of the core on the bench with N, T and K, confirms what is sure with
    /// Shift+C, says with W that the reading is done, and goes on to the next with Ctrl+N.
    void finish_core(MainWindow& window) {
        const auto reading = [&]() -> const Reading& { return window.control().model().core()->reading; };
        const auto still_open = [&] {
            std::vector<Finding> open;
            std::ranges::copy_if(reading().findings, std::back_inserter(open),
                                 [](const Finding& one) { return one.state == Finding::State::Open; });
            return open;
        };
        if (!still_open().empty()) {
            key(window, Qt::Key_N);
        }
        for (int guard = 0; guard < 200 && !still_open().empty(); ++guard) {
            const int row = window.findChild<FindingsList*>()->currentRow();
            ASSERT_GE(row, 0) << "a finding is gone to before it is answered";
            const Finding chosen = still_open().at(static_cast<std::size_t>(row));
            key(window, is_right(reading(), chosen) ? Qt::Key_T : Qt::Key_K);
        }
        key(window, Qt::Key_C, Qt::ShiftModifier);
        key(window, Qt::Key_W);
        ASSERT_TRUE(at_rest(window));
        key(window, Qt::Key_N, Qt::ControlModifier);
    }
    void finish_all(MainWindow& window) {
        const auto to_do = [&] {
            return std::ranges::count_if(readings(), [](const Reading& one) {
                return one.state == Reading::State::Proposed || one.state == Reading::State::Returned;
            });
        };
        for (int guard = 0; guard < 20 && to_do() > 0; ++guard) {
            const auto before = to_do();
            finish_core(window);
            ASSERT_EQ(to_do(), before - 1);
            ASSERT_TRUE(to_do() == 0 || QTest::qWaitFor(
                                            [&] {
                                                const auto* core = window.control().model().core();
                                                return core != nullptr &&
                                                       core->reading.state != Reading::State::Marked &&
                                                       core->reading.state != Reading::State::Passed;
                                            },
                                            60'000));
            ASSERT_TRUE(at_rest(window));
        }
        EXPECT_TRUE(review::analysts_list(readings()).empty());
    }
    /// Waits until the review shows something, or has nothing left.
    static bool shows(MainWindow& window) {
        return at_rest(window) && QTest::qWaitFor([&] {
                   auto& page = window.review();
                   return page.items().empty() || (page.shown() && page.viewer().model().core() != nullptr);
               });
    }
    /// What the review lists, as far as a verdict changes it.
    static std::vector<std::tuple<ReadingId, std::optional<FindingId>, Verdict>> states(MainWindow& window) {
        std::vector<std::tuple<ReadingId, std::optional<FindingId>, Verdict>> all;
        for (const QueueItem& item : window.review().items()) {
            all.emplace_back(item.reading, item.finding, item.verdict);
        }
        return all;
    }
    /// The supervisor judges until nothing is left that can be: the first `returned` with a comment and J, the others
    /// with O.
    void judge_all(MainWindow& window, int returned) {
        key(window, Qt::Key_2, Qt::ControlModifier);
        ASSERT_TRUE(QTest::qWaitFor([&] { return !window.review().items().empty(); }, 60'000)) << "the list is read";
        for (int guard = 0; guard < 500; ++guard) {
            ASSERT_TRUE(shows(window));
            if (window.review().items().empty()) {
                if (std::ranges::count(readings(), Reading::State::Marked, &Reading::state) == 0) {
                    return;
                }
                QTest::qWait(100); // the list is read anew
                continue;
            }
            ASSERT_LT(guard, 499) << "something is never judged";
            const auto before = states(window);
            if (returned > 0) {
                key(window, Qt::Key_I);
                QTest::keyClicks(QApplication::focusWidget(), "look again");
                key(window, Qt::Key_Return);
                key(window, Qt::Key_J);
            } else {
                key(window, Qt::Key_O);
            }
            // A key that comes while the list follows the technician's last edits judges nothing, and is pressed again.
            returned -= QTest::qWaitFor([&] { return states(window) != before; }) ? 1 : 0;
        }
    }
    long passed() { return std::ranges::count(readings(), Reading::State::Passed, &Reading::state); }

    Appearance appearance;
};

TEST_F(ReviewSession, FromTheScansToAPassedExport) {
    ASSERT_EQ(run("create hill.pithward --sheet sheet.csv --scans scans --by Ida"), 0) << said();
    ASSERT_EQ(run("measure hill.pithward --by Ida"), 0) << said();
    EXPECT_EQ(run("export hill.pithward --only passed --csv a.csv"), 2);
    EXPECT_NE(said().find("no reading is passed"), std::string::npos) << said();
    EXPECT_FALSE(fs::exists(folder.file("a.csv")));
    {
        MainWindow technician{open_scan, appearance};
        open(technician, "Ida");
        finish_all(technician);
        const auto queue = review::supervisors_queue(readings());
        ASSERT_GE(queue.size(), 4U);
        EXPECT_TRUE(std::ranges::is_sorted(queue, std::ranges::greater(), &review::Waiting::rings_at_stake));

        MainWindow supervisor{open_scan, appearance};
        open(supervisor, "Sue");
        judge_all(supervisor, 2);
        EXPECT_EQ(review::analysts_list(readings()).size(), 2U);
        EXPECT_GE(passed(), 2);
        EXPECT_LT(passed(), 4);

        ASSERT_EQ(run("export hill.pithward --only passed --csv a.csv"), 0) << said();
        EXPECT_NE(said().find("not passed, 0 without a reading"), std::string::npos) << said();

        key(technician, Qt::Key_N, Qt::ControlModifier);
        finish_all(technician);
        judge_all(supervisor, 0);
        EXPECT_EQ(passed(), 4);
    }
    ASSERT_EQ(
        run("export hill.pithward --only passed --force --csv a.csv --decadal a.rwl --template a.txt --json a.json"), 0)
        << said();

    // Every export says how much was looked at, confirmed in bulk, passed, and by whom.
    for (const char* name : {"a.csv", "a.rwl", "a.txt", "a.json"}) {
        const std::string text = test::bytes_of(folder.file(name));
        for (const char* words : {"project hill.pithward, readings that are passed", " looked at, ",
                                  " confirmed in bulk", "4 passed", "marked by Ida 4; passed by Sue 4"}) {
            EXPECT_NE(text.find(words), std::string::npos) << name << ": " << words;
        }
    }
    // What is exported is the truth where that can be seen.
    const WidthTable table = read_series_file(folder.file("a.rwl")).value();
    ASSERT_EQ(table.series.size(), session_cores.size());
    for (const WidthSeries& series : table.series) {
        const VisibleTruth truth = visible_truth(series.id);
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
} // namespace pithward::bench
