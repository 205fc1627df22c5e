#include "tests/site/site_project.h"

#include "libcore/record/scan_entry.h"
#include "tests/app/fake_scan.h"
#include "tests/dating/made_up.h"

#include <filesystem>
#include <fstream>

namespace pithward::bench {

namespace {

constexpr double narrow = 0.25; // So that a hundred rings fit on a fake scan.
constexpr double weak = 0.3;

std::vector<dating::TreeSeries> slope() {
    auto site = test::made_up_site({.trees = 8, .cores = 1, .first_year = 1921, .years = 100, .r = 0.9});
    for (dating::TreeSeries& series : site) {
        series.widths.values *= narrow;
    }
    return site;
}

/// A reading whose rings have these widths, from the bark inward.
Reading reading_of(const dating::TreeSeries& series, const std::string& scan) {
    const ReadingRequest request = fake_request(scan);
    Reading reading = fake_reading(request);
    const Boundary sample = reading.boundaries.front();
    reading.boundaries.clear();
    reading.findings.clear();
    double x = request.path.front().x + 20.0;
    const auto add = [&] {
        Boundary boundary = sample;
        boundary.id = BoundaryId{static_cast<std::int64_t>(reading.boundaries.size()) + 1};
        boundary.at = {x, request.path.front().y};
        boundary.curve = {boundary.at + ImagePoint{0, -60}, boundary.at, boundary.at + ImagePoint{0, 60}};
        reading.boundaries.push_back(boundary);
    };
    add();
    for (int year = series.widths.last_year(); year >= series.widths.first_year; --year) {
        x += series.widths.at(year) * request.calibration.px_per_mm();
        add();
    }
    reading.core = series.id;
    reading.last_year = Year(series.widths.last_year());
    return reading;
}

/// The boundary that closes a year toward the bark.
std::size_t closing(int year) {
    return static_cast<std::size_t>(2020 - year);
}

Reading with_mistake(std::size_t number, Reading reading) {
    auto& boundaries = reading.boundaries;
    if (number == 0) {
        Candidate candidate;
        const auto between = boundaries.begin() + static_cast<std::ptrdiff_t>(closing(1969));
        candidate.id = CandidateId{1000};
        candidate.at = between->at;
        candidate.tangent = between->tangent;
        candidate.confidence = weak;
        reading.not_annual.push_back(candidate);
        boundaries.erase(between);
    } else if (number == 1) {
        Boundary within = boundaries[closing(1960)];
        within.id = BoundaryId{1000};
        within.at.x = 0.5 * (within.at.x + boundaries[closing(1959)].at.x);
        within.curve.clear();
        within.confidence = 1.0 - weak;
        boundaries.insert(boundaries.begin() + static_cast<std::ptrdiff_t>(closing(1959)), within);
        Finding doubted;
        doubted.id = FindingId{1};
        doubted.kind = FindingKind::PossiblyFalse;
        doubted.at = within.at;
        doubted.boundary = within.id;
        doubted.reason = "soft on both sides";
        reading.findings.push_back(doubted);
    }
    return reading;
}

Site site_of(const std::vector<dating::TreeSeries>& all, std::size_t cores) {
    Site site;
    site.id = "Slope";
    for (std::size_t i = 0; i < cores; ++i) {
        Tree tree;
        tree.id = all[i].tree;
        tree.species = "PISY";
        Core core;
        core.id = all[i].id;
        core.scan = "scans/" + core.id + ".png";
        tree.cores.push_back(core);
        site.trees.push_back(tree);
    }
    return site;
}

} // namespace

void SiteProject::make(int cores) {
    std::filesystem::remove(file);
    std::filesystem::create_directory(folder.file("scans"));
    auto all = slope();
    test::lose_ring(all[2].widths, 1975);
    const auto count = static_cast<std::size_t>(cores);
    const Site site = site_of(all, count);
    std::vector<record::ScanEntry> scans;
    for (const Tree& tree : site.trees) {
        const std::string& path = tree.cores.front().scan;
        std::ofstream(folder.file(path)) << "the pixels of " << path;
        scans.push_back(record::scan_entry(folder.file(path), path).value());
    }
    const auto stamp = test::stamp_by("Ida");
    record::Project project = record::Project::create(file, std::vector{site}, scans, stamp).value();
    for (std::size_t i = 0; i < count; ++i) {
        const Reading reading = with_mistake(i, reading_of(all[i], site.trees[i].cores.front().scan));
        const record::CoreId core{static_cast<std::int64_t>(i) + 1};
        ASSERT_TRUE(project.add_reading(core, reading, "Propose a reading", stamp).has_value());
    }
}

} // namespace pithward::bench
