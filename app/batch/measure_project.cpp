#include "app/batch/measure_project.h"

#include "app/batch/outside_folders.h"
#include "app/batch/project_scans.h"
#include "app/batch/read_core.h"
#include "app/batch/site_piths.h"
#include "app/batch/tree_ages.h"
#include "libcore/dating/bark_year.h"
#include "libcore/field/field_checks.h"
#include "libcore/record/project.h"
#include "libcore/record/scan_search.h"
#include "libimaging/label/placed_cores.h"
#include "libimaging/scan/threads.h"

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <map>
#include <set>

namespace pithward::batch {

namespace {

using record::CoreEntry;
using record::Project;

struct Counts {
    int read = 0;
    int refused = 0;
    int findings = 0;
};

std::optional<Fault> unusable_with_project(const MeasureOptions& options) {
    if (!options.path.empty() || options.last_year) {
        return Fault{options.path.empty() ? "--last-year" : "--path", "this can't hold for all cores of a project",
                     "leave it out, and set it in the window"};
    }
    for (const std::string* output : {&options.csv, &options.json, &options.decadal, &options.overlay}) {
        if (!output->empty()) {
            return Fault{*output, "what is read of a project is kept in it", "leave out the file"};
        }
    }
    return std::nullopt;
}

/// Those of a scan's paths that are a core's, by what is told of all cores on the scan.
Outcome<std::vector<FoundCore>> own_paths(const CoreEntry& core, const std::vector<CoreEntry>& cores,
                                          const std::vector<FoundCore>& found, const Calibration& scale,
                                          const Scan& header) {
    std::vector<std::optional<field::ScanPlace>> places;
    std::size_t own = 0;
    for (const CoreEntry& other : cores) {
        if (other.core.scan == core.core.scan) {
            own = other.id == core.id ? places.size() : own;
            places.push_back(field::scan_place_of(other.core));
        }
    }
    const std::vector<WholeCore> whole = whole_cores(found, scale, header.orientation);
    const auto chosen = cores_at(places, whole, found, scale, core.core.id + ", " + core.core.scan);
    if (!chosen) {
        return tl::unexpected(chosen.error());
    }
    std::vector<FoundCore> paths;
    for (const std::size_t path : whole[(*chosen)[own]]) {
        paths.push_back(found[path]);
    }
    return paths;
}

/// A reading whose scan goes by the name that the project has for it.
Reading renamed(Reading reading, const std::string& scan) {
    std::map<std::string, Calibration> scales;
    for (const auto& [name, scale] : reading.calibrations) {
        scales[scan] = scale;
    }
    reading.calibrations = std::move(scales);
    for (Leg& leg : reading.path.legs) {
        leg.scan = scan;
    }
    return reading;
}

class ProjectReader {
public:
    ProjectReader(Project& project, const MeasureOptions& options, MeasureTask task,
                  std::vector<std::filesystem::path> outside, bool quiet)
        : project_(project)
        , options_(options)
        , task_(std::move(task))
        , outside_(std::move(outside))
        , quiet_(quiet) {}

    /// Whether the project itself could not be written: then no other core can be kept either.
    [[nodiscard]] bool project_failed() const { return project_failed_; }

    /// Keeps the readings of one core; answers with how many open findings they have.
    Outcome<int> read(const CoreEntry& core, Project::Beside beside) {
        const auto scan = scan_of(core);
        if (!scan) {
            return tl::unexpected(scan.error());
        }
        MeasureTask task = task_;
        task.wood = task.wood ? task.wood : core.tree.wood;
        task.outer = task.outer == OuterWood::Unknown ? core.core.outer : task.outer;
        const auto scale = scale_of(*scan, options_.dpi, task.ruler);
        const auto paths = scale ? paths_of(core, *scan, *scale, task) : tl::unexpected(scale.error());
        if (!paths) {
            return tl::unexpected(paths.error());
        }
        int findings = 0;
        for (const FoundCore& path : *paths) {
            auto measured = read_core(*scan, *scale, task, path, knowledge_of(core.tree));
            if (measured && paths->size() == 1) {
                date(core, measured->reading);
                measured->reading =
                    with_field_checks(std::move(measured->reading), measured->series, core.site, core.tree, core.core);
            }
            const auto kept = keep(core, std::move(measured), beside);
            if (!kept) {
                return tl::unexpected(kept.error());
            }
            findings += *kept;
            beside = Project::Beside::Others; // a core that goes past the pith has two
        }
        return findings;
    }

private:
    /// The paths of a core among those of its scan: two where it goes past the pith.
    Outcome<std::vector<FoundCore>> paths_of(const CoreEntry& core, const ScanFile& scan, const ScanScale& scale,
                                             const MeasureTask& task) {
        auto found = paths_on_.find(core.core.scan);
        if (found == paths_on_.end()) {
            auto paths = paths_on(scan, scale.for_path(task.path), task);
            if (!paths) {
                return tl::unexpected(paths.error());
            }
            found = paths_on_.emplace(core.core.scan, std::move(*paths)).first;
        }
        const auto cores = project_.cores();
        return cores ? own_paths(core, *cores, found->second, scale.for_path(task.path), scan.header())
                     : tl::unexpected(cores.error());
    }

    [[nodiscard]] Outcome<ScanFile> scan_of(const CoreEntry& core) const {
        if (core.core.scan.empty()) {
            return fail(core.core.id, "this core has no scan",
                        "settle it in the window, or name it in the field sheet");
        }
        const auto place = record::place_outside(project_.folder(), core.core.scan);
        if (place && !record::is_named(*place, outside_)) {
            return tl::unexpected(not_named(core.core.scan, *place));
        }
        const auto scans = project_.scans();
        const auto found = scans ? record::find_scan(project_.folder(), core.core.scan, *scans, outside_)
                                 : tl::unexpected(scans.error());
        if (!found) {
            return tl::unexpected(found.error());
        }
        if (found->moved && !quiet_) {
            std::fprintf(stderr, "%s: its scan %s was moved: the same bytes are in %s\n", core.core.id.c_str(),
                         core.core.scan.c_str(), found->file.c_str());
        }
        return ScanFile::open(found->file.string());
    }

    /// Years by the field sheet, where it tells them. It tells of one bark end: a core that goes past the pith has two.
    void date(const CoreEntry& core, Reading& reading) const {
        const auto year = dating::bark_year(core.site, core.tree, core.core, reading.outer);
        if (year) {
            reading.last_year = *year;
        } else if (!quiet_) {
            std::fprintf(stderr, "%s\n", year.error().line().c_str());
        }
    }

    Outcome<int> keep(const CoreEntry& core, Outcome<MeasuredReading> measured, Project::Beside beside) {
        if (!measured) {
            return tl::unexpected(std::move(measured.error()));
        }
        Reading reading = renamed(std::move(measured->reading), core.core.scan);
        const int findings = static_cast<int>(reading.findings.size());
        std::string label = "Propose a reading";
        if (reading.last_year) {
            label += ", its outermost ring of " + std::to_string(reading.last_year->value()) + " by the field sheet";
        }
        auto kept = project_.add_reading(core.id, std::move(reading), label, stamp_now(options_.by), beside);
        if (!kept) {
            project_failed_ = true;
            return tl::unexpected(std::move(kept.error()));
        }
        if (!*kept) {
            if (!quiet_) {
                std::fprintf(stderr, "%s: somebody else has read it meanwhile\n", core.core.id.c_str());
            }
            return 0;
        }
        if (!quiet_) {
            std::fprintf(stderr, "%s: %zu rings, %d findings\n", core.core.id.c_str(), measured->series.rings.size(),
                         findings);
        }
        return findings;
    }

    Project& project_;
    const MeasureOptions& options_;
    MeasureTask task_;
    std::vector<std::filesystem::path> outside_; ///< What may be read outside of the project's folder.
    bool quiet_;
    std::map<std::string, std::vector<FoundCore>> paths_on_; ///< By scan, since several cores may be on one.
    bool project_failed_ = false;
};

/// The cores to read: those named, or those without a reading.
Outcome<std::vector<CoreEntry>> wanted_cores(const Project& project, std::set<std::string> named) {
    const auto cores = project.cores();
    const auto readings = project.readings();
    if (!cores || !readings) {
        return tl::unexpected(cores ? readings.error() : cores.error());
    }
    const bool all = named.empty();
    std::vector<CoreEntry> wanted;
    for (const CoreEntry& core : *cores) {
        const bool is_read = std::ranges::any_of(*readings, [&](const auto& one) { return one.core == core.id; });
        if (all ? !is_read : named.contains(core.core.id)) {
            wanted.push_back(core);
        }
    }
    for (const CoreEntry& core : wanted) {
        named.erase(core.core.id);
    }
    if (!named.empty()) {
        return fail(project.file().string(), "there is no core " + *named.begin(), "see pithward show");
    }
    return wanted;
}

/// What the cores of a site tell of each other; answers with how many findings came in.
Outcome<int> compare_cores(Project& project, const EditStamp& stamp) {
    return judge_piths_by_site(project, stamp).and_then([&] { return compare_tree_ages(project, stamp); });
}

} // namespace

bool names_project(const MeasureOptions& options) {
    return !options.scans.empty() && options.scans.front().ends_with(".pithward");
}

Exit measure_project(const MeasureOptions& options, const CommonOptions& common) {
    if (const auto unusable = unusable_with_project(options)) {
        return report(*unusable);
    }
    MeasureOptions without_scans = options;
    without_scans.scans.clear();
    const auto task = task_of(without_scans);
    auto outside = outside_folders(options.outside);
    if (!task || !outside) {
        return report(task ? outside.error() : task.error());
    }
    auto project = Project::open(options.scans.front(), Project::Access::Write);
    if (!project) {
        return report(project.error());
    }
    const auto cores = wanted_cores(*project, {options.scans.begin() + 1, options.scans.end()});
    if (!cores) {
        return report(cores.error());
    }
    use_threads(common.threads);
    ProjectReader reader(*project, options, *task, std::move(*outside), common.quiet);
    Counts counts;
    // A core that is named gets another reading; else only those that have none are read, whoever reads them first.
    const auto beside = options.scans.size() > 1 ? Project::Beside::Others : Project::Beside::None;
    for (const CoreEntry& core : *cores) {
        const auto findings = reader.read(core, beside);
        if (!findings && reader.project_failed()) {
            return report(
                {core.core.id + ", " + findings.error().where, findings.error().what, findings.error().remedy});
        }
        if (!findings) {
            warn(findings.error());
            ++counts.refused;
            continue;
        }
        ++counts.read;
        counts.findings += *findings;
    }
    const auto compared = compare_cores(*project, stamp_now("Pithward")); // no person's to undo
    if (!compared) {
        return report(compared.error());
    }
    counts.findings += *compared;
    if (counts.read == 0 && counts.refused > 0) {
        return report({options.scans.front(), "no core could be read", "see the lines above"});
    }
    return common.strict && counts.findings + counts.refused > 0 ? Exit::NeedsPerson : Exit::Done;
}

} // namespace pithward::batch
