#include "app/project/growth_beside.h"
#include "app/project/project_desk.h"
#include "libcore/record/scan_entry.h"

#include <algorithm>
#include <filesystem>
#include <iterator>
#include <set>

// How cores come from the project to the bench, and new readings from the bench into the project.

namespace pithward::bench {

namespace {

/// Whether readings are of one core: a single one, or the two sides of one that goes past the pith, which meet there.
bool are_of_one_core(const std::vector<picture::MeasuredCore>& cores) {
    constexpr double meeting_mm = 3.0;
    if (cores.size() != 2) {
        return cores.size() == 1;
    }
    const Reading& one = cores.front().reading;
    const Reading& other = cores.back().reading;
    if (one.path.legs.empty() || other.path.legs.empty() || one.calibrations.empty()) {
        return false;
    }
    const Calibration& scale = one.calibrations.begin()->second;
    return scale.distance(one.path.legs.back().points.back(), other.path.legs.back().points.back()).value() <
           meeting_mm;
}

} // namespace

const BenchScan* ProjectDesk::scan_of(ReadingId reading) const {
    const record::ReadingEntry* entry = reading_of(overview_, reading);
    const record::CoreEntry* core = entry != nullptr ? core_of(overview_, entry->core) : nullptr;
    const auto& scans = model_.scans();
    const auto found = std::ranges::find_if(scans, [&](const BenchScan& scan) {
        return core != nullptr && scan.recorded && scan.opened->name() == core->core.scan;
    });
    return found == scans.end() ? nullptr : &*found;
}

const record::CoreEntry* ProjectDesk::core_on(const std::string& scan) const {
    const record::CoreEntry* wanted = core_of(overview_, wanted_.core);
    if (wanted != nullptr && wanted->core.scan == scan) {
        return wanted;
    }
    const auto core = std::ranges::find_if(overview_.cores, [&](const auto& one) { return one.core.scan == scan; });
    return core == overview_.cores.end() ? nullptr : &*core;
}

void ProjectDesk::open_reading(ReadingId id) {
    if (const record::ReadingEntry* reading = reading_of(overview_, id)) {
        open_core(reading->core);
        wanted_.reading = id;
        show_wanted();
    }
}

void ProjectDesk::open_core(record::CoreId id) {
    const record::CoreEntry* core = core_of(overview_, id);
    if (core == nullptr) {
        return;
    }
    if (core->core.scan.empty()) {
        tell({core->core.id, "this core has no scan", "name it in the field sheet"});
        return;
    }
    wanted_ = {id, core->accepted};
    const auto here = std::ranges::find_if(
        model_.scans(), [&](const BenchScan& scan) { return scan.recorded && scan.opened->name() == core->core.scan; });
    if (here != model_.scans().end()) {
        control_.show_scan(here->id);
        show_wanted();
        return;
    }
    std::vector<ReadingId> ids; // a scan may show several cores, and a core may have several readings
    for (const record::ReadingEntry& reading : overview_.readings) {
        const record::CoreEntry* of = core_of(overview_, reading.core);
        if (of != nullptr && of->core.scan == core->core.scan) {
            ids.push_back(reading.id);
        }
    }
    store_->ask<KeptCore>(
        [ids, core = *core](record::Project& project) -> Outcome<KeptCore> {
            KeptCore kept;
            kept.documents.reserve(ids.size());
            for (const ReadingId reading : ids) {
                auto document = project.document(reading);
                if (!document) {
                    return tl::unexpected(std::move(document.error()));
                }
                kept.documents.push_back(std::move(*document));
            }
            return growth_beside(project, core).map([&](const auto& growth) {
                kept.growth = growth;
                return std::move(kept);
            });
        },
        [this, core = *core](Outcome<KeptCore> kept) {
            if (kept) {
                fetch(core, std::move(*kept));
            } else {
                tell(kept.error());
            }
        });
}

void ProjectDesk::fetch(const record::CoreEntry& core, KeptCore kept) {
    struct Fetched {
        std::optional<PlaceOutside> outside; ///< Then nothing is opened.
        std::optional<Outcome<ProjectScan>> scan;
    };
    control_.jobs().start<Fetched>(
        tr("Opening"),
        [overview = overview_, core, opener = opener_, allowed = allowed_](const Work& /*work*/) {
            auto outside = not_allowed(overview, core, allowed);
            return outside ? Fetched{std::move(outside), {}}
                           : Fetched{{}, open_project_scan(overview, core, opener, allowed)};
        },
        [this, core, kept = std::move(kept)](Fetched fetched) {
            if (fetched.outside) {
                emit leads_outside(core.id, *fetched.outside);
                return;
            }
            Outcome<ProjectScan>& found = *fetched.scan;
            if (!found) {
                tell(found.error());
                return;
            }
            if (found->moved) {
                emit told(tr("The scan %1 was moved: the same bytes are in %2")
                              .arg(QString::fromStdString(core.core.scan), QString::fromStdString(found->scan.path)));
            }
            found->scan.growth = kept.growth;
            put_on_bench(core, std::move(found->scan), kept.documents);
        });
}

void ProjectDesk::put_on_bench(const record::CoreEntry& core, OpenedScan scan, std::vector<Document> documents) {
    const auto believed = believed_calibration(scan.header, std::nullopt);
    std::optional<Calibration> scale = believed ? std::optional(*believed) : std::nullopt;
    for (const Document& document : documents) {
        const auto& scales = document.reading().calibrations;
        if (const auto said = scales.find(core.core.scan); said != scales.end()) {
            scale = said->second;
        }
    }
    const int id = model_.add_scan(std::move(scan), scale, true);
    for (Document& document : documents) {
        if (!model_.put_reading(id, std::move(document))) {
            emit told(
                tr("A reading of %1 can't be measured, and is not shown.").arg(QString::fromStdString(core.core.id)));
        }
    }
    const bool of_several = std::ranges::count_if(overview_.cores, [&](const record::CoreEntry& one) {
                                return one.core.scan == core.core.scan;
                            }) > 1;
    if (of_several) {
        model_.leave_unread(id); // the command that measures knows which of them is which
        if (!core.accepted) {
            emit told(tr("Several cores are on this scan. Measure all cores (Ctrl+Shift+M) reads each of them."));
        }
    }
    if (overview_.can_change) {
        control_.show_scan(id);
    } else {
        model_.show_scan(id); // what would be read could not be kept
        if (documents.empty()) {
            emit told(tr("%1 has no reading, and the project can't be written to.")
                          .arg(QString::fromStdString(core.core.id)));
        }
    }
    show_wanted();
    fetch_further(id);
    read_overview_soon(); // what was changed while the scan was opened
}

void ProjectDesk::fetch_further(int scan) {
    const BenchScan* home = model_.find(scan);
    std::set<std::string> missing;
    for (const Document& document : home != nullptr ? home->documents : std::vector<Document>()) {
        for (const Leg& leg : document.reading().path.legs) {
            if (model_.named(leg.scan) == nullptr) {
                missing.insert(leg.scan);
            }
        }
    }
    if (missing.empty()) {
        return;
    }
    using Scans = std::vector<Outcome<ProjectScan>>;
    control_.jobs().start<Scans>(
        tr("Opening"),
        [overview = overview_, missing, opener = opener_, allowed = allowed_](const Work& /*work*/) {
            Scans scans;
            for (const std::string& name : missing) {
                record::CoreEntry core;
                core.core.scan = name;
                scans.push_back(open_project_scan(overview, core, opener, allowed)); // refuses what leads outside
            }
            return scans;
        },
        [this, scan](Scans scans) {
            for (Outcome<ProjectScan>& one : scans) {
                if (!one) {
                    tell(one.error());
                    continue;
                }
                one->scan.field.reset(); // what is told of the core stands at its first scan
                const std::string name = one->scan.named;
                std::optional<Calibration> scale;
                const BenchScan* first = model_.find(scan);
                for (const Document& document : first != nullptr ? first->documents : std::vector<Document>()) {
                    const auto& scales = document.reading().calibrations;
                    if (const auto said = scales.find(name); said != scales.end()) {
                        scale = said->second;
                    }
                }
                const int id = model_.add_scan(std::move(one->scan), scale, true);
                model_.leave_unread(id);
            }
        });
}

std::string ProjectDesk::name_in_project(const std::string& path) const {
    if (!is_open()) {
        return {};
    }
    std::error_code failed;
    const auto folder = std::filesystem::weakly_canonical(overview_.folder, failed);
    const auto file = std::filesystem::weakly_canonical(path, failed);
    const std::string name = file.lexically_relative(folder).generic_string();
    return failed || name.empty() || name.starts_with("..") ? std::string() : name;
}

bool ProjectDesk::can_hold(const BenchScan& scan) const {
    return !scan.opened->named.empty() && scan.opened->named == name_in_project(scan.opened->path);
}

void ProjectDesk::note_scan(const BenchScan& scan) {
    std::error_code unknown; // the checksum follows when the overview is read anew
    const auto bytes = static_cast<std::int64_t>(std::filesystem::file_size(scan.opened->path, unknown));
    put_scan({scan.opened->named, unknown ? 0 : bytes, {}});
}

void ProjectDesk::put_scan(const record::ScanEntry& entry) {
    store_->ask<void>([entry, stamp = stamp()](record::Project& project) { return project.put_scan(entry, stamp); },
                      [this](const Outcome<void>& done) {
                          if (!done) {
                              tell(done.error());
                          }
                          read_overview_soon();
                      });
}

void ProjectDesk::sum_up_scans() {
    if (!overview_.can_change) {
        return;
    }
    for (const record::ScanEntry& scan : overview_.scans) {
        if (scan.sha256.empty()) {
            checksums_->compute(overview_.folder, scan.path);
        }
    }
}

void ProjectDesk::show_wanted() {
    if (wanted_.reading) {
        model_.show_reading(*wanted_.reading);
    }
}

void ProjectDesk::step_core(int by) {
    const auto here = std::ranges::find(overview_.cores, present().value_or(wanted_.core), &record::CoreEntry::id);
    const auto index = here == overview_.cores.end() ? 0 : (here - overview_.cores.begin()) + by;
    if (index >= 0 && index < std::ssize(overview_.cores)) {
        open_core(overview_.cores[static_cast<std::size_t>(index)].id);
    }
}

void ProjectDesk::keep_proposed(int scan, const std::vector<picture::MeasuredCore>& cores) {
    const BenchScan* on = model_.find(scan);
    const record::CoreEntry* core = on != nullptr ? core_on(on->opened->name()) : nullptr;
    if (!store_ || core == nullptr || cores.empty()) {
        return;
    }
    if (!are_of_one_core(cores)) {
        emit told(tr("%n cores are on this scan. Draw the path of %1 (P).", nullptr, static_cast<int>(cores.size()))
                      .arg(QString::fromStdString(core->core.id)));
        return;
    }
    for (const picture::MeasuredCore& one : cores) {
        Reading reading = one.reading;
        reading.core = core->core.id;
        store_->ask<Document>(
            [core = core->id, reading, label = tr("Propose a reading").toStdString(),
             stamp = stamp()](record::Project& project) {
                return project.add_reading(core, reading, label, stamp).and_then([&](ReadingId id) {
                    return project.document(id);
                });
            },
            [this, scan](Outcome<Document> kept) {
                if (!kept) {
                    tell(kept.error());
                    return;
                }
                const ReadingId id = kept->reading().id;
                model_.put_reading(scan, std::move(*kept));
                model_.show_reading(id);
                read_overview_soon();
            });
    }
}

} // namespace pithward::bench
