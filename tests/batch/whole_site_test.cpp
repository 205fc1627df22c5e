// The whole job on the whole demo site: a bare field sheet and a folder of scans in, three commands, an archive package
// with its report out, held against what the renderer of the site says is on the scans. Between the commands one person
// does what the window asks for: findings are answered as the wood has it, and years that the other cores contradict
// are set as they say.
#include "libcore/edit/finding_edits.h"
#include "libcore/edit/reading_edits.h"
#include "libcore/formats/archive_template.h"
#include "libcore/formats/decadal.h"
#include "libcore/record/project.h"
#include "libcore/review/queue.h"
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
#include <set>
#include <sstream>

namespace pithward::test {
namespace {

namespace fs = std::filesystem;
using nlohmann::json;

/// Two boundaries this near to each other on the path are one: a third of a narrow ring.
constexpr double same_mm = 0.15;

json truth_of_core(const std::string& core) {
    std::ifstream in(fs::path(PITHWARD_DEMO) / (core + ".truth.json"));
    return json::parse(in);
}

/// How far along the core a place lies, in millimetres.
class AlongCore {
public:
    explicit AlongCore(const json& truth) {
        const auto& path = truth.at("path");
        const auto x_of = [](const json& point) { return (point.is_array() ? point[0] : point.at("x")).get<double>(); };
        const auto y_of = [](const json& point) { return (point.is_array() ? point[1] : point.at("y")).get<double>(); };
        from_ = {x_of(path.front()), y_of(path.front())};
        const ImagePoint way = ImagePoint{x_of(path.back()), y_of(path.back())} - from_;
        const double length = std::hypot(way.x, way.y);
        constexpr double mm_per_inch = 25.4;
        const double px_mm = mm_per_inch / truth.at("dpi").get<double>();
        unit_ = way * (px_mm / length);
    }
    [[nodiscard]] double at(ImagePoint place) const {
        const ImagePoint off = place - from_;
        return off.x * unit_.x + off.y * unit_.y;
    }

private:
    ImagePoint from_;
    ImagePoint unit_;
};

/// Where the boundaries that can be seen lie along the core.
std::vector<double> seen_places(const json& truth) {
    const AlongCore along(truth);
    std::vector<double> places;
    for (const auto& boundary : truth.at("boundaries")) {
        if (boundary.at("visible").get<bool>()) {
            places.push_back(along.at({boundary.at("x"), boundary.at("y")}));
        }
    }
    return places;
}

bool is_one_of(const std::vector<double>& places, double place) {
    return std::ranges::any_of(places, [&](double one) { return std::abs(one - place) < same_mm; });
}

struct WholeSiteTrial : testing::Test {
    TemporaryFolder folder;
    std::map<std::string, json> readings; ///< Of the package, by core.

    std::string in_site(const std::string& name) const { return folder.file(name); }
    int run(const std::string& arguments) {
        const std::string command =
            "cd '" + in_site("") + "' && env -u DISPLAY '" PITHWARD_PROGRAM "' " + arguments + " > out.log 2> said.log";
        const int status = std::system(command.c_str());
        return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }
    std::string said() { return bytes_of(in_site("said.log")); }

    void SetUp() override {
        fs::copy_file(fs::path(PITHWARD_DEMO) / "field-sheet.csv", in_site("field-sheet.csv"));
        for (const auto& entry : fs::directory_iterator(PITHWARD_DEMO)) {
            if (entry.path().extension() == ".jpg") {
                fs::copy_file(entry.path(), in_site(entry.path().filename().string()));
            }
        }
        ASSERT_EQ(run("create hw.pithward --sheet field-sheet.csv --scans . --by Ida"), 0) << said();
        ASSERT_EQ(run("measure hw.pithward --by Ida --quiet"), 0) << said();
        answer_findings();
        ASSERT_EQ(run("crossdate hw.pithward --json dating.json --quiet"), 0) << said();
        set_years();
        ASSERT_EQ(run("package hw.pithward --out hw --quiet"), 0) << said();
        std::ifstream in(in_site("hw/hw-readings.json"));
        const json all = json::parse(in);
        for (const auto& reading : all.at("readings")) {
            readings[reading.at("core")] = reading;
        }
    }
    json dating() {
        std::ifstream in(in_site("dating.json"));
        return json::parse(in);
    }
    record::Project project() {
        return record::Project::open(in_site("hw.pithward"), record::Project::Access::Write).value();
    }
    static void make(record::Project& project, ReadingId id, const Outcome<Edit>& edit) {
        ASSERT_TRUE(edit.has_value()) << edit.error().line();
        ASSERT_TRUE(project.edit(id, *edit, {"Ida", record::utc_now(), "0.1.0"}).has_value());
    }

    /// What a boundary proposed or doubted is, by the truth.
    static Finding::State answer(const Reading& reading, const Finding& finding) {
        const json truth = truth_of_core(reading.core);
        const AlongCore along(truth);
        const auto seen = seen_places(truth);
        if (const auto* proposed = std::get_if<ProposeBoundary>(&finding.change)) {
            return is_one_of(seen, along.at(proposed->boundary.at)) ? Finding::State::ProposalTaken
                                                                    : Finding::State::KeptAsItIs;
        }
        if (const auto* removal = std::get_if<ProposeRemoval>(&finding.change)) {
            const auto boundary = std::ranges::find(reading.boundaries, removal->boundary, &Boundary::id);
            const bool there = boundary != reading.boundaries.end() && is_one_of(seen, along.at(boundary->at));
            return there ? Finding::State::KeptAsItIs : Finding::State::ProposalTaken;
        }
        return Finding::State::KeptAsItIs;
    }
    void answer_findings() {
        record::Project open = project();
        const auto entries = open.readings().value();
        for (const record::ReadingEntry& entry : entries) {
            const Reading first = open.reading(entry.id).value();
            for (const Finding& finding : first.findings) {
                const Document document = open.document(entry.id).value();
                const auto state = answer(document.reading(), finding);
                make(open, entry.id, settle_finding(document.reading(), finding.id, state, "", document.fresh_id()));
            }
        }
    }
    /// A series that fits otherwise as a whole, or has no years, is dated as the others say, where there are enough of
    /// its kind to say it.
    void set_years() {
        record::Project open = project();
        std::map<std::string, ReadingId> ids;
        std::set<std::string> pines;
        const auto cores = open.cores().value();
        for (const record::CoreEntry& core : cores) {
            ids[core.core.id] = core.accepted.value();
            if (core.tree.species.starts_with("Pinus")) {
                pines.insert(core.core.id);
            }
        }
        const json said = dating();
        for (const auto& series : said.at("series")) {
            const ReadingId id = ids.at(series.at("id"));
            const int shift = series.at("whole_shift");
            if (shift != 0 && pines.contains(series.at("id"))) {
                make(open, id, shift_years(open.reading(id).value(), shift));
            }
        }
        for (const auto& series : said.at("undated")) {
            const ReadingId id = ids.at(series.at("id"));
            const Year last(series.at("positions").at(0).at("last_year").get<int>());
            make(open, id, set_last_year(open.reading(id).value(), last));
        }
    }

    void the_chronology_is_that_of_the_truth();
    void each_boundary_that_can_be_seen_is_found();
    void widths_stand_at_their_years();
    void the_year_of_the_pith_lies_in_its_interval();
    void the_package_holds_it_all();
    void the_other_cores_tell_what_one_cannot();
};

void WholeSiteTrial::each_boundary_that_can_be_seen_is_found() {
    int seen = 0;
    int missed = 0;
    for (const auto& [core, reading] : readings) {
        const json truth = truth_of_core(core);
        const AlongCore along(truth);
        std::vector<double> found;
        for (const auto& boundary : reading.at("boundaries")) {
            found.push_back(along.at({boundary.at("x"), boundary.at("y")}));
        }
        for (const double place : seen_places(truth)) {
            ++seen;
            if (!is_one_of(found, place)) {
                ++missed;
                std::printf("%s: the boundary %.2f mm along the core was not found\n", core.c_str(), place);
            }
        }
    }
    EXPECT_GT(seen, 1600);
    EXPECT_LE(missed, 2);
}

void WholeSiteTrial::widths_stand_at_their_years() {
    // What the truth calls absent leaves no trace on a scan: years that are older can't be right on that core alone.
    // HW08A has a boundary in its bark for which the program does not ask, and one other oak does not show it.
    const std::string not_told = "HW08A";
    int compared = 0;
    int wrong = 0;
    for (const auto& [core, reading] : readings) {
        const json truth = truth_of_core(core);
        int oldest = -10'000;
        for (const auto& boundary : truth.at("boundaries")) {
            if (!boundary.at("visible").get<bool>()) {
                oldest = std::max(oldest, boundary.at("year").get<int>() + 1);
            }
        }
        std::map<int, double> widths;
        for (const auto& ring : reading.at("rings")) {
            if (!ring.at("year").is_null() && !ring.at("width_mm").is_null()) {
                widths[ring.at("year")] = ring.at("width_mm");
            }
        }
        int wrong_here = 0;
        for (const auto& ring : truth.at("widths")) {
            const int year = ring.at("year");
            if (year <= oldest || ring.at("radial_mm").is_null() || !widths.contains(year)) {
                continue;
            }
            ++compared;
            wrong_here += std::abs(widths[year] - ring.at("radial_mm").get<double>()) > 0.1 ? 1 : 0;
        }
        std::printf("%s: %d rings are not as they were laid\n", core.c_str(), wrong_here);
        if (core != not_told) {
            EXPECT_LE(wrong_here, 1) << core;
            wrong += wrong_here;
        }
    }
    EXPECT_GT(compared, 1500);
    EXPECT_LE(wrong, 3) << "of " << compared;
}

void WholeSiteTrial::the_year_of_the_pith_lies_in_its_interval() {
    int told = 0;
    int outside = 0;
    for (const auto& [core, reading] : readings) {
        const auto& age = reading.at("age");
        if (age.is_null() || age.at("pith_year_low").is_null()) {
            continue;
        }
        const json truth = truth_of_core(core);
        // The innermost boundary closes the ring that the pith lies in, or the first of those that are missing.
        const int innermost = truth.at("boundaries").back().at("year");
        const auto& pith = truth.at("pith");
        const int year =
            pith.at("inside").get<bool>() ? innermost : innermost + 1 - pith.at("missing_rings").get<int>();
        ++told;
        const bool inside = age.at("pith_year_low") <= year && year <= age.at("pith_year_high");
        outside += inside ? 0 : 1;
        std::printf("%s: the pith is of %d, told %d to %d\n", core.c_str(), year, age.at("pith_year_low").get<int>(),
                    age.at("pith_year_high").get<int>());
    }
    EXPECT_GE(told, 11);
    EXPECT_LE(outside, 3) << "intervals hold nine in ten";
}

void WholeSiteTrial::the_package_holds_it_all() {
    const std::string command = "cd '" + in_site("hw") + "' && sha256sum --quiet -c SHA256SUMS";
    EXPECT_EQ(std::system(command.c_str()), 0);
    EXPECT_EQ(bytes_of(in_site("hw/hw-report.pdf")).substr(0, 5), "%PDF-");
    const std::string html = bytes_of(in_site("hw/hw-report.html"));
    std::ifstream decadal_in(in_site("hw/hw.rwl"));
    const auto decadal = read_decadal(decadal_in);
    ASSERT_TRUE(decadal) << decadal.error().line();
    std::ifstream template_in(in_site("hw/hw-template.txt"));
    const auto archive = read_archive_template(template_in);
    ASSERT_TRUE(archive) << archive.error().line();
    EXPECT_EQ(decadal->series.size(), 16U);
    EXPECT_EQ(archive->series.size(), 16U);
    for (const WidthSeries& series : decadal->series) {
        ASSERT_TRUE(readings.contains(series.id)) << series.id;
        EXPECT_NE(html.find(series.id), std::string::npos) << series.id;
        for (const auto& ring : readings[series.id].at("rings")) {
            if (ring.at("year").is_null() || ring.at("width_mm").is_null()) {
                continue;
            }
            const auto index = static_cast<std::size_t>(ring.at("year").get<int>() - series.first_year.value());
            ASSERT_LT(index, series.widths.size()) << series.id << ' ' << ring;
            ASSERT_TRUE(series.widths[index].has_value()) << series.id << ' ' << ring;
            EXPECT_NEAR(series.widths[index]->value(), ring.at("width_mm").get<double>(), 0.0006);
        }
    }
    for (const char* chapter : {"Dating and chronology", "Ages", "Growth over time", "The cores", "Limits"}) {
        EXPECT_NE(html.find(chapter), std::string::npos) << chapter;
    }
}

void WholeSiteTrial::the_other_cores_tell_what_one_cannot() {
    const json said = dating();
    // HW03B lost its outer wood with its bark; its outermost ring is of this year by the truth.
    ASSERT_EQ(said.at("undated").size(), 1U);
    EXPECT_EQ(said.at("undated")[0].at("id"), "HW03B");
    EXPECT_EQ(said.at("undated")[0].at("positions")[0].at("last_year"),
              truth_of_core("HW03B").at("last_complete_ring_year"));
    // HW03A laid no ring on this radius in one year.
    int absent = 0;
    const json truth = truth_of_core("HW03A");
    for (const auto& boundary : truth.at("boundaries")) {
        if (!boundary.at("visible").get<bool>()) {
            absent = boundary.at("year");
        }
    }
    for (const auto& series : said.at("series")) {
        if (series.at("id") == "HW03A") {
            ASSERT_EQ(series.at("slips").size(), 1U);
            EXPECT_EQ(series.at("slips")[0].at("kind"), "ring missing");
            const int year = series.at("slips")[0].at("ring_year").get<int>() - series.at("whole_shift").get<int>();
            EXPECT_NEAR(year, absent, 2) << "of ring " << absent;
        }
    }
}

/// Values of a chronology, by year.
std::map<int, double> chronology_values(const std::string& csv) {
    std::istringstream in(csv);
    std::map<int, double> values;
    for (std::string line; std::getline(in, line);) {
        std::istringstream cells(line);
        int year = 0;
        char comma = 0;
        double value = 0.0;
        if (cells >> year >> comma >> value) {
            values[year] = value;
        }
    }
    return values;
}

/// The widths as they were laid, averaged in the same way, give the same chronology.
void WholeSiteTrial::the_chronology_is_that_of_the_truth() {
    std::map<int, std::map<std::string, double>> laid;
    for (const auto& [core, reading] : readings) {
        const json truth = truth_of_core(core);
        for (const auto& ring : truth.at("widths")) {
            if (!ring.at("radial_mm").is_null()) {
                laid[ring.at("year")][core] = ring.at("radial_mm");
            }
        }
    }
    std::ofstream out(in_site("truth.csv"));
    out << "year";
    for (const auto& [core, reading] : readings) {
        out << ',' << core;
    }
    for (const auto& [year, widths] : laid) {
        out << '\n' << year;
        for (const auto& [core, reading] : readings) {
            out << ',' << (widths.contains(core) ? std::to_string(widths.at(core)) : "");
        }
    }
    out << '\n';
    out.close();
    ASSERT_EQ(run("chronology truth.csv --out laid.csv --quiet"), 0) << said();
    ASSERT_EQ(run("chronology hw.pithward --out found.csv --quiet"), 0) << said();
    const auto wanted = chronology_values(bytes_of(in_site("laid.csv")));
    const auto found = chronology_values(bytes_of(in_site("found.csv")));
    constexpr int well_covered = 1940; // Six trees and more.
    int compared = 0;
    double worst = 0.0;
    for (const auto& [year, value] : wanted) {
        if (year >= well_covered && found.contains(year)) {
            ++compared;
            worst = std::max(worst, std::abs(value - found.at(year)));
        }
    }
    EXPECT_EQ(compared, 84);
    EXPECT_LT(worst, 0.1) << "of a chronology about 1, with one core of sixteen misread";
    std::printf("the chronology differs by %.3f at most\n", worst);
}

/// One test, since the site is measured for it.
TEST_F(WholeSiteTrial, FromSheetAndScansToThePackageAsTheTruthHasIt) {
    ASSERT_EQ(readings.size(), 16U);
    each_boundary_that_can_be_seen_is_found();
    the_chronology_is_that_of_the_truth();
    widths_stand_at_their_years();
    the_year_of_the_pith_lies_in_its_interval();
    the_package_holds_it_all();
    the_other_cores_tell_what_one_cannot();
}

} // namespace
} // namespace pithward::test
