// What a project of 1,000 cores and 200,000 boundaries costs beside bare SQL on the same file: see docs/record.md.
// Usage: record_speed FOLDER, on the disk that is to be measured; it makes a project there and removes it.
#include "app/review/queue_items.h"
#include "libcore/edit/boundary_edits.h"
#include "libcore/record/connection.h"
#include "libcore/record/project.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <random>

namespace {

using namespace pithward;
using record::Connection;
using record::Project;

constexpr int cores = 1000;
constexpr int boundaries = 200;
constexpr int openings = 15;
constexpr int edits = 200;

template <typename Work>
double seconds(Work&& work) {
    const auto begin = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

double median(std::vector<double> values) {
    const auto middle = values.begin() + std::ssize(values) / 2;
    std::ranges::nth_element(values, middle);
    return *middle;
}

template <typename T>
T must(Outcome<T> outcome) {
    if (!outcome) {
        std::fprintf(stderr, "%s\n", outcome.error().line().c_str());
        std::exit(2);
    }
    if constexpr (!std::is_void_v<T>) {
        return std::move(*outcome);
    }
}

const EditStamp stamp{"Ida", "2024-06-30T12:00:00.000Z", "0.1.0"};

/// A straight core of 200 rings, each traced over 2 mm in 41 points; one ring in ten with a finding.
Reading made_up(std::mt19937& random) {
    std::uniform_real_distribution<double> jitter(-1.0, 1.0);
    Reading reading;
    reading.state = Reading::State::Marked; // all wait for a second person
    reading.path.legs = {{"scan.tif", {{0.0, 500.0}, {12'000.0, 500.0}}, {}}};
    reading.calibrations["scan.tif"] = Calibration{47.24, 47.24, 0.002, Calibration::Source::FileTag};
    for (int i = 1; i <= boundaries; ++i) {
        Boundary boundary;
        boundary.id = BoundaryId{i};
        boundary.at = {50.0 * i + jitter(random), 500.0};
        boundary.tangent = 1.5708;
        boundary.sd = Millimetres(0.005);
        boundary.confidence = 0.97;
        boundary.latewood = Millimetres(0.3);
        for (int k = 0; k <= 40; ++k) {
            boundary.curve.push_back({boundary.at.x + jitter(random), 450.0 + 2.5 * k});
        }
        if (i % 10 == 0) {
            Finding finding;
            finding.id = FindingId{i};
            finding.at = boundary.at;
            finding.boundary = boundary.id;
            finding.reason = "the change of tone is soft on both sides";
            reading.findings.push_back(std::move(finding));
        }
        reading.boundaries.push_back(std::move(boundary));
    }
    return reading;
}

void fill(const std::string& file) {
    Site site;
    site.id = "Hill";
    for (int i = 1; i <= cores; ++i) {
        Tree tree;
        tree.id = "H" + std::to_string(i);
        Core core;
        core.id = tree.id + "A";
        core.scan = "scan.tif";
        tree.cores = {core};
        site.trees.push_back(std::move(tree));
    }
    Project project = must(Project::create(file, std::vector{site}, {}, stamp));
    std::mt19937 random(1);
    for (int i = 1; i <= cores; ++i) {
        (void)must(project.add_reading(record::CoreId{i}, made_up(random), "Propose a reading", stamp));
    }
}

/// Steps through all rows of a statement and looks at every value, and does no more.
void step_through(const Connection& connection, const char* statement) {
    auto rows = must(connection.run(statement));
    int columns = -1;
    while (rows.next()) {
        for (int i = 0; i < std::max(columns, 1) && rows.value(i).isValid(); ++i) {
            columns = std::max(columns, i + 2);
        }
    }
}

constexpr const char* core_rows =
    "SELECT * FROM core JOIN tree ON core.tree = tree.id JOIN site ON tree.site = site.id";
constexpr const char* reading_rows = "SELECT id, core, revision, analyst, state FROM reading";
constexpr const char* boundary_rows = "SELECT reading, confirmation FROM boundary";
constexpr const char* finding_rows = "SELECT reading, state FROM finding";

void tell_opening(const std::string& file) {
    std::vector<double> ours;
    std::vector<double> bare;
    for (int n = 0; n < openings; ++n) {
        ours.push_back(seconds([&] {
            const Project project = must(Project::open(file, Project::Access::Read));
            (void)must(project.cores());
            (void)must(project.readings());
        }));
        bare.push_back(seconds([&] {
            const auto connection = must(Connection::open(file, Connection::Mode::Read));
            for (const char* statement : {core_rows, reading_rows, boundary_rows, finding_rows}) {
                step_through(*connection, statement);
            }
        }));
    }
    std::printf(
        "opening, cores and readings with their counts: %.1f ms; a bare SELECT of the same rows: %.1f ms; %.2f\n",
        1e3 * median(ours), 1e3 * median(bare), median(ours) / median(bare));
}

void tell_reading(const std::string& file) {
    const Project project = must(Project::open(file, Project::Access::Read));
    const auto connection = must(Connection::open(file, Connection::Mode::Read));
    std::vector<double> ours;
    std::vector<double> bare;
    for (int n = 0; n < 3; ++n) {
        ours.push_back(seconds([&] {
            for (int i = 1; i <= cores; ++i) {
                (void)must(project.reading(ReadingId{i}));
            }
        }));
        bare.push_back(seconds([&] {
            for (const char* statement : {"SELECT * FROM boundary", "SELECT * FROM finding", "SELECT * FROM reading"}) {
                step_through(*connection, statement);
            }
        }));
    }
    std::printf("all readings as values: %.0f ms; a bare SELECT of the same rows: %.0f ms; %.2f\n", 1e3 * median(ours),
                1e3 * median(bare), median(ours) / median(bare));
}

/// What the review's list asks of the store: the first time, and again after one of the readings was changed.
void tell_queue(const std::string& file) {
    Project project = must(Project::open(file, Project::Access::Write));
    bench::ReadingShelf shelf;
    std::size_t waiting = 0;
    const auto look = [&] { waiting = must(bench::read_queue(project, shelf, bench::Waits::SecondPerson)).size(); };
    const double first = seconds(look);
    std::vector<double> again;
    for (int n = 0; n < openings; ++n) {
        const ReadingId id{1 + n};
        (void)must(project.edit(id, must(annotate(must(project.reading(id)), BoundaryId{1}, "seen")), stamp));
        again.push_back(seconds(look));
    }
    std::printf("the review's list of %zu that wait: %.0f ms at first, %.0f ms after a change\n", waiting, 1e3 * first,
                1e3 * median(again));
}

void tell_edits(const std::string& file) {
    Project project = must(Project::open(file, Project::Access::Write));
    const auto connection = must(Connection::open(file, Connection::Mode::Write));
    const ReadingId id{7};
    Reading reading = must(project.reading(id));
    std::vector<double> ours;
    std::vector<double> bare;
    for (int n = 0; n < edits; ++n) {
        const Edit edit = must(annotate(reading, BoundaryId{1 + n % boundaries}, "note " + std::to_string(n)));
        ours.push_back(seconds([&] { (void)must(project.edit(id, edit, stamp)); }));
        bare.push_back(seconds([&] {
            (void)must(connection->run("BEGIN IMMEDIATE"));
            (void)must(connection->run("UPDATE boundary SET note = ? WHERE reading = 8 AND id = ?",
                                       {QString::number(n), 1 + n % boundaries}));
            (void)must(connection->run("COMMIT"));
        }));
    }
    std::printf("an edit: %.3f ms; a bare commit of one changed row: %.3f ms; %.2f (medians of %d, in turns)\n",
                1e3 * median(ours), 1e3 * median(bare), median(ours) / median(bare), edits);
}

} // namespace

int main(int argc, char** argv) {
    if (argc != 2) {
        std::fprintf(stderr, "record_speed FOLDER\n");
        return 2;
    }
    const std::string file = std::string(argv[1]) + "/record_speed.pithward";
    std::filesystem::remove(file);
    const double filling = seconds([&] { fill(file); });
    std::printf("%d cores, %d boundaries: made in %.1f s, file of %.1f MB\n", cores, cores * boundaries, filling,
                static_cast<double>(std::filesystem::file_size(file)) / 1e6);
    tell_opening(file);
    tell_reading(file);
    tell_queue(file);
    tell_edits(file);
    std::filesystem::remove(file);
    return 0;
}
