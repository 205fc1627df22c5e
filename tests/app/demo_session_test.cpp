#include "app/bench/exporting/export_dialog.h"
#include "app/bench/panels/findings_list.h"
#include "app/bench/scan_view/scan_view.h"
#include "app/bench/window/main_window.h"
#include "libcore/formats/decadal.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <QTest>
#include <cmath>
#include <cstdio>
#include <fstream>

namespace pithward::bench {
namespace {

/// What is really on a demo scan.
struct DemoTruth {
    struct Mark {
        ImagePoint at;
        int year = 0;
    };
    std::vector<Mark> visible; ///< Boundaries that can be seen, from the bark.
    ImagePoint end;            ///< Where the line ends along which it is known ...
    ImagePoint inward;         ///< ... and its direction there.
    std::map<int, std::optional<double>> widths_mm;

    explicit DemoTruth(const std::string& name) {
        std::ifstream in(std::string(PITHWARD_DEMO) + "/" + name + ".truth.json");
        const auto json = nlohmann::json::parse(in);
        for (const auto& mark : json.at("boundaries")) {
            if (mark.at("visible").get<bool>()) {
                visible.push_back({{mark.at("x"), mark.at("y")}, mark.at("year")});
            }
        }
        const auto& path = json.at("path");
        const auto& before = path.at(path.size() - 2);
        end = {path.back().at(0), path.back().at(1)};
        inward = end - ImagePoint{before.at(0), before.at(1)};
        for (const auto& ring : json.at("widths")) {
            const auto& width = ring.at("radial_mm");
            widths_mm[ring.at("year")] = width.is_null() ? std::nullopt : std::optional(width.get<double>());
        }
    }
};

/// A person at the window who measures one core after the other, by real keys and clicks. Every one of them counts.
class DemoSessionTrial : public testing::Test {
protected:
    void SetUp() override {
        window.resize(1600, 1000);
        window.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
    }
    void wait() {
        ASSERT_TRUE(QTest::qWaitFor([&] { return !window.control().jobs().busy() && !window.pith().busy(); }, 60'000));
        QCoreApplication::processEvents();
    }
    void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        ++actions;
        window.activateWindow(); // a dialog may just have closed
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
        QTest::keyClick(&window.view(), key, with);
        QCoreApplication::processEvents();
    }
    QPoint on_view(ImagePoint at) { return window.view().view().to_view(at).toPoint(); }
    void point(ImagePoint at) { QTest::mouseMove(window.view().viewport(), on_view(at)); }
    /// A boundary out of sight is gone to by a click on its ring's width, which is an action too.
    void bring_to_sight(ImagePoint at) {
        ++actions;
        window.view().go_to(at);
    }
    const Reading& reading() { return window.control().model().core()->reading; }
    const RingSeries& series() { return window.control().model().core()->series; }

    static double apart(ImagePoint a, ImagePoint b) { return std::hypot(a.x - b.x, a.y - b.y); }
    /// The boundary of the truth that a place marks; each ring is some 20 pixels and more.
    static const DemoTruth::Mark* marked(const DemoTruth& truth, const Boundary& boundary) {
        constexpr double tolerance = 8.0; // pixels across the boundary
        const DemoTruth::Mark* nearest = nullptr;
        for (const DemoTruth::Mark& mark : truth.visible) {
            const ImagePoint off = mark.at - boundary.at;
            const double across = std::abs(off.x * std::sin(boundary.tangent) - off.y * std::cos(boundary.tangent));
            if (across < tolerance &&
                (nearest == nullptr || apart(mark.at, boundary.at) < apart(nearest->at, boundary.at))) {
                nearest = &mark;
            }
        }
        return nearest;
    }

    /// Whether a boundary is none. What lies further in than the truth tells of is wood too, and nobody knows.
    static bool is_none(const DemoTruth& truth, const Boundary& boundary) {
        const ImagePoint off = boundary.at - truth.end;
        return marked(truth, boundary) == nullptr && off.x * truth.inward.x + off.y * truth.inward.y <= 0.0;
    }
    bool is_marked(const DemoTruth& truth, const DemoTruth::Mark& mark) {
        return std::ranges::any_of(reading().boundaries,
                                   [&](const Boundary& one) { return marked(truth, one) == &mark; });
    }

    /// Opens each finding and says what a person sees: takes the proposal where the truth agrees with it.
    void settle_findings(const DemoTruth& truth) {
        const auto open = [&] { return std::ranges::find(reading().findings, Finding::State::Open, &Finding::state); };
        if (open() == reading().findings.end()) {
            return;
        }
        key(Qt::Key_N);
        for (int guard = 0; guard < 100 && open() != reading().findings.end(); ++guard) {
            const Finding finding = *open();
            const auto boundary =
                std::ranges::find(reading().boundaries, finding.boundary.value_or(BoundaryId{}), &Boundary::id);
            const bool is_false = finding.kind == FindingKind::PossiblyFalse &&
                                  boundary != reading().boundaries.end() && is_none(truth, *boundary);
            const bool change = !std::holds_alternative<std::monostate>(finding.change);
            const auto* proposed = std::get_if<ProposeBoundary>(&finding.change);
            const DemoTruth::Mark* meant = proposed != nullptr ? marked(truth, proposed->boundary) : nullptr;
            const bool overlooked = meant != nullptr && !is_marked(truth, *meant);
            key((is_false && change) || overlooked ? Qt::Key_T : Qt::Key_K);
        }
    }
    /// What the person sees beside the findings: boundaries that are none, and ones that are missing.
    void mend(const DemoTruth& truth) {
        for (int guard = 0; guard < 50; ++guard) {
            const auto extra =
                std::ranges::find_if(reading().boundaries, [&](const Boundary& one) { return is_none(truth, one); });
            if (extra == reading().boundaries.end()) {
                break;
            }
            // At its line, a little beside the path: there may be a bend of the path itself.
            const ImagePoint at = extra->curve.size() > 1 ? extra->curve[extra->curve.size() / 3] : extra->at;
            bring_to_sight(extra->at);
            point(at);
            key(Qt::Key_F);
        }
        for (const DemoTruth::Mark& mark : truth.visible) {
            if (is_marked(truth, mark)) {
                continue;
            }
            bring_to_sight(mark.at);
            point(mark.at);
            const auto before = reading().boundaries.size();
            key(Qt::Key_A);
            if (!QTest::qWaitFor([&] { return reading().boundaries.size() > before; }, 2'000)) {
                key(Qt::Key_A, Qt::ShiftModifier);
            }
        }
    }

    struct Score {
        int rings = 0;
        int right_years = 0;
        int good_widths = 0;
        int widths = 0;
    };
    /// Of the rings that the truth knows a width of.
    Score score(const DemoTruth& truth) {
        constexpr double tolerance_mm = 0.02;
        Score result;
        for (const Ring& ring : series().rings) {
            ++result.rings;
            const auto known = ring.year ? truth.widths_mm.find(ring.year->value()) : truth.widths_mm.end();
            if (known == truth.widths_mm.end()) {
                continue;
            }
            ++result.right_years;
            if (known->second && ring.width) {
                ++result.widths;
                result.good_widths += std::abs(*known->second - ring.width->value()) <= tolerance_mm ? 1 : 0;
            }
        }
        return result;
    }
    bool every_boundary_dated_right(const DemoTruth& truth) {
        for (std::size_t i = 0; i < reading().boundaries.size(); ++i) {
            const DemoTruth::Mark* mark = marked(truth, reading().boundaries[i]);
            const auto year = series().boundaries.at(i).year;
            if (mark == nullptr && !is_none(truth, reading().boundaries[i])) {
                continue;
            }
            if (mark == nullptr || !year || year->value() != mark->year) {
                return false;
            }
        }
        return true;
    }

    Appearance appearance;
    MainWindow window{open_scan, appearance};
    int actions = 0;
};

TEST_F(DemoSessionTrial, ActionsOnTheDemoConifers) {
    const QTemporaryDir folder;
    std::printf("core    rings  actions  of which marking  per 100 rings  years right  widths within 0.02 mm\n");
    for (const char* name :
         {"HW01A", "HW01B", "HW02A", "HW02B", "HW03A", "HW04A", "HW04B", "HW05A", "HW05B", "HW06A", "HW06B"}) {
        const DemoTruth truth(name);
        actions = 1; // to the next scan of the folder
        window.control().open({QString("%1/%2.jpg").arg(PITHWARD_DEMO, name)});
        wait();
        ASSERT_NE(window.control().model().core(), nullptr) << name;
        settle_findings(truth);
        mend(truth);
        key(Qt::Key_C, Qt::ShiftModifier); // what is sure, in bulk
        const int marking = actions - 1;
        key(Qt::Key_D, Qt::ControlModifier);
        auto* shown = window.findChild<ExportDialog*>();
        ASSERT_NE(shown, nullptr);
        ASSERT_TRUE(QTest::qWaitFor([&] { return shown->ready(); }));
        const QString file = folder.filePath(QString(name) + ".rwl");
        shown->set_path(file);
        ++actions; // Enter
        QTest::keyClick(shown, Qt::Key_Return);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        EXPECT_TRUE(QFile::exists(file)) << name;
        const Score result = score(truth);
        const bool dated = every_boundary_dated_right(truth);
        const double per_100 = 100.0 * actions / std::max(1, result.rings);
        std::printf("%s  %5d  %7d  %16d  %13.1f  %11s  %d of %d\n", name, result.rings, actions, marking, per_100,
                    dated ? "all" : "not all", result.good_widths, result.widths);
        if (std::string(name).starts_with("HW01")) { // clear conifer
            EXPECT_LE(per_100, 8.0) << name;
            EXPECT_TRUE(dated) << name;
            EXPECT_GE(result.good_widths, 0.95 * result.widths) << name;
        }
    }
}

/// The whole way on a real scan.
class WindowOnDemo : public DemoSessionTrial {};

TEST_F(WindowOnDemo, FromOpeningToAFileThatHoldsTheTruth) {
    const DemoTruth truth("HW01A");
    window.control().open({QString(PITHWARD_DEMO) + "/HW01A.jpg"});
    wait();
    ASSERT_NE(window.control().model().core(), nullptr);
    EXPECT_EQ(reading().last_year, Year(2023)) << "from the field sheet";
    const Reading proposed = reading();
    const auto nth = [&](std::size_t i) { return reading().boundaries.at(i); };
    window.view().show_pixels();

    // Delete one and add it again by a click near it.
    const Boundary gone = nth(20);
    window.view().go_to(gone.at);
    window.editor().take_up(gone.id);
    key(Qt::Key_Delete);
    ASSERT_EQ(reading().boundaries.size() + 1, proposed.boundaries.size());
    point(gone.at + ImagePoint{3, 4});
    key(Qt::Key_A);
    ASSERT_TRUE(QTest::qWaitFor([&] { return reading().boundaries.size() == proposed.boundaries.size(); }));
    QCoreApplication::processEvents();
    EXPECT_LT(apart(nth(20).at, gone.at), 1.0) << "the wood says where it is, not the click";

    // Drag one aside and back, confirm one, mark a ring as locally absent.
    const ImagePoint at = nth(30).at;
    window.view().go_to(at);
    const auto drag = [&](ImagePoint from, ImagePoint to) {
        QWidget* canvas = window.view().viewport();
        point(from);
        QTest::mousePress(canvas, Qt::LeftButton, {}, on_view(from));
        QTest::mouseMove(canvas, on_view((from + to) * 0.5));
        QTest::mouseMove(canvas, on_view(to));
        QTest::mouseRelease(canvas, Qt::LeftButton, {}, on_view(to));
        QCoreApplication::processEvents();
    };
    drag(at + ImagePoint{0, 12}, at + ImagePoint{9, 12});
    EXPECT_GT(apart(nth(30).at, at), 4.0);
    window.editor().take_up(nth(40).id);
    const auto rings = series().rings.size();
    key(Qt::Key_L);
    EXPECT_EQ(series().rings.size(), rings + 1);
    wait();
    const Reading changed = reading();

    // Everything back, everything again, and back to what is true.
    const auto run = [&](ActionId id) {
        int steps = 0;
        for (; window.actions().at(id)->isEnabled() && steps < 50; ++steps) {
            window.actions().at(id)->trigger();
            QCoreApplication::processEvents();
        }
        return steps;
    };
    const int undone = run(ActionId::Undo);
    wait();
    EXPECT_EQ(undone, 4);
    EXPECT_EQ(reading(), proposed);
    EXPECT_EQ(run(ActionId::Redo), undone);
    wait();
    EXPECT_EQ(reading(), changed);
    run(ActionId::Undo);
    settle_findings(truth);
    mend(truth);

    const QTemporaryDir folder(QDir::tempPath() + "/demo März-XXXXXX");
    window.actions().at(ActionId::ExportDecadal)->trigger();
    auto* shown = window.findChild<ExportDialog*>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return shown->ready(); }));
    shown->set_path(folder.filePath("a.rwl"));
    shown->save();
    std::ifstream file(folder.filePath("a.rwl").toStdString());
    const auto table = read_decadal(file);
    ASSERT_TRUE(table.has_value());
    const WidthSeries& written = table->series.at(0);
    int compared = 0;
    int good = 0;
    int further_in = 0; ///< Than the truth tells of.
    for (std::size_t i = 0; i < written.widths.size(); ++i) {
        const int year = written.first_year.value() + static_cast<int>(i);
        if (year < truth.widths_mm.begin()->first) {
            ++further_in;
            continue;
        }
        const auto known = truth.widths_mm.find(year);
        ASSERT_NE(known, truth.widths_mm.end()) << "a year that the core does not have";
        if (known->second && written.widths[i]) {
            ++compared;
            good += std::abs(*known->second - written.widths[i]->value()) <= 0.02 ? 1 : 0;
        }
    }
    EXPECT_LE(further_in, 1);
    EXPECT_EQ(static_cast<std::size_t>(compared + further_in), written.widths.size());
    EXPECT_GE(good, 0.95 * compared);
}

} // namespace
} // namespace pithward::bench
