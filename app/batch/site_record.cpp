#include "app/batch/site_record.h"

#include "app/report/paper/core_picture.h"
#include "libcore/field/height_allowance.h"
#include "libcore/measure/measure.h"
#include "libcore/record/scan_search.h"
#include "libcore/review/statement.h"

#include <algorithm>
#include <map>
#include <utility>

namespace pithward::batch {

namespace {

using record::Project;
using report::CorePicture;
using report::CoreRecord;
using report::ScanRecord;
using report::SiteRecord;
using report::Worker;

/// Finds each scan once, and whether it is still the one that was measured.
class Scans {
public:
    Scans(const Project& project, std::vector<record::ScanEntry> entries)
        : project_(project)
        , entries_(std::move(entries)) {}

    /// The path of a scan; what stands in its place is noted.
    Outcome<std::string> find(const std::string& path) {
        const auto found = record::find_scan(project_.folder(), path, entries_);
        const auto entry = std::ranges::find(entries_, path, &record::ScanEntry::path);
        ScanRecord::State& state = states_[path];
        if (!found) {
            std::error_code error;
            const bool other =
                entry != entries_.end() && std::filesystem::is_regular_file(project_.folder() / path, error);
            state = other ? ScanRecord::State::Other : ScanRecord::State::NotFound;
            return tl::unexpected(found.error());
        }
        if (entry != entries_.end() && !entry->sha256.empty()) {
            state = ScanRecord::State::Same; // else it would not have been found
        }
        return found->file.string();
    }

    [[nodiscard]] std::vector<ScanRecord> records() {
        std::vector<ScanRecord> all;
        for (const record::ScanEntry& entry : entries_) {
            if (!states_.contains(entry.path)) {
                (void)find(entry.path);
            }
            all.push_back({entry, states_[entry.path]});
        }
        return all;
    }

private:
    const Project& project_;
    std::vector<record::ScanEntry> entries_;
    std::map<std::string, ScanRecord::State> states_;
};

CorePicture picture_of_leg(Scans& scans, const MeasuredReading& measured, std::size_t leg) {
    const std::string& name = measured.reading.path.legs[leg].scan;
    CorePicture picture{name, {}, {}};
    const auto file = scans.find(name);
    const auto scan = file ? ScanFile::open(*file) : tl::unexpected(file.error());
    auto bytes =
        scan ? report::core_picture(*scan, measured.reading, measured.series, leg) : tl::unexpected(scan.error());
    if (bytes) {
        picture.jpeg = std::move(*bytes);
    } else {
        picture.reason = bytes.error().what;
    }
    return picture;
}

std::vector<Worker> workers_of(const std::vector<record::HistoryEntry>& history, ReadingId reading) {
    std::vector<Worker> workers;
    for (const record::HistoryEntry& entry : history) {
        if (entry.reading != reading) {
            continue;
        }
        auto worker = std::ranges::find(workers, entry.who, &Worker::who);
        if (worker == workers.end()) {
            worker = workers.insert(worker, Worker{entry.who, 0, entry.at, entry.at});
        }
        ++worker->edits;
        worker->last = entry.at;
    }
    return workers;
}

class Gatherer {
public:
    Gatherer(const Project& project, const std::optional<HeightAllowance>& allowance,
             std::vector<record::ScanEntry> scans)
        : project_(project)
        , allowance_(allowance)
        , scans_(project, std::move(scans)) {}

    Outcome<CoreRecord> gather(const record::CoreEntry& entry, std::string name) {
        CoreRecord core;
        core.entry = entry;
        core.name = std::move(name);
        if (!entry.accepted) {
            core.not_measured = entry.core.scan.empty() ? "This core has no scan" : "This core has not been read yet";
            return core;
        }
        const auto document = project_.document(*entry.accepted);
        const auto history = document ? project_.history(entry.id) : tl::unexpected(document.error());
        if (!history) {
            return tl::unexpected(history.error());
        }
        core.standing = review::standing(document->reading(), document->log());
        core.workers = workers_of(*history, *entry.accepted);
        auto series = measure(document->reading());
        if (!series) {
            core.not_measured = "Its reading can't be measured: " + series.error().what;
            return core;
        }
        core.measured = MeasuredReading{document->reading(), std::move(*series), {}, {}};
        core.measured->reading.core = core.name;
        core.age =
            age_of(core.measured->reading, core.measured->series, field::height_allowance(entry.core, allowance_));
        for (std::size_t leg = 0; leg < core.measured->reading.path.legs.size(); ++leg) {
            core.pictures.push_back(picture_of_leg(scans_, *core.measured, leg));
        }
        return core;
    }

    std::vector<ScanRecord> scans() { return scans_.records(); }

private:
    const Project& project_;
    std::optional<HeightAllowance> allowance_;
    Scans scans_;
};

/// Each version once, in order of first sight.
Outcome<std::vector<std::string>> programs_of(const Project& project) {
    return project.history().map([](const std::vector<record::HistoryEntry>& history) {
        std::vector<std::string> programs;
        for (const record::HistoryEntry& entry : history) {
            if (!entry.program.empty() && std::ranges::find(programs, entry.program) == programs.end()) {
                programs.push_back(entry.program);
            }
        }
        return programs;
    });
}

dating::CrossdateOptions crossdating() {
    return {}; // As pithward crossdate has it without options.
}

dating::IndexOptions averaging() {
    dating::IndexOptions options; // As pithward chronology has it without options.
    options.trend = dating::TrendKind::Exponential;
    options.prewhiten = false;
    return options;
}

} // namespace

Outcome<SiteRecord> site_record(const Project& project, const std::optional<HeightAllowance>& allowance,
                                const std::function<void(const std::string&)>& seen) {
    const auto cores = project.cores();
    const auto scans = cores ? project.scans() : tl::unexpected(cores.error());
    const auto people = scans ? project.people() : tl::unexpected(scans.error());
    const auto programs = people ? programs_of(project) : tl::unexpected(people.error());
    if (!programs) {
        return tl::unexpected(programs.error());
    }
    SiteRecord record;
    record.project = project.file().filename().string();
    record.version = PITHWARD_VERSION;
    record.made_at = record::utc_now();
    record.programs = *programs;
    record.people = *people;
    record.crossdating = crossdating();
    record.chronology = averaging();
    std::map<std::string, int> names;
    for (const record::CoreEntry& entry : *cores) {
        ++names[entry.core.id];
    }
    Gatherer gatherer(project, allowance, *scans);
    std::vector<review::Standing> standings;
    for (const record::CoreEntry& entry : *cores) {
        auto core =
            gatherer.gather(entry, names[entry.core.id] > 1 ? entry.site.id + "_" + entry.core.id : entry.core.id);
        if (!core) {
            return tl::unexpected(std::move(core.error()));
        }
        if (core->measured) {
            standings.push_back(core->standing);
        }
        if (seen) {
            seen(core->name);
        }
        record.cores.push_back(std::move(*core));
    }
    record.scans = gatherer.scans();
    record.statement = review::statement(standings);
    record.groups = dated_groups(record.cores, record.crossdating, record.chronology);
    return record;
}

} // namespace pithward::batch
