#include "app/project/scan_settling.h"

#include "libcore/record/scan_search.h"

#include <algorithm>
#include <filesystem>

namespace pithward::bench {

ScanSettling::ScanSettling(ProjectDesk& desk, QObject* parent)
    : QObject(parent)
    , desk_(desk) {
    connect(&desk_, &ProjectDesk::opened, this, [this] {
        changes_.clear();
        open_ = {};
        look();
    });
    connect(&desk_, &ProjectDesk::overview_changed, this, &ScanSettling::look);
}

void ScanSettling::look() {
    if (!desk_.is_open()) {
        return;
    }
    using Open = record::ScansToSettle;
    desk_.store().ask<Open>([](record::Project& project) { return record::scans_to_settle(project); },
                            [this](Outcome<Open> open) {
                                if (!open) {
                                    emit told(QString::fromStdString(open.error().line()));
                                    return;
                                }
                                open_ = std::move(*open);
                                emit changed();
                            });
}

bool ScanSettling::can_change(record::CoreId core) const {
    const auto& readings = desk_.overview().readings;
    return desk_.overview().can_change &&
           std::ranges::find(readings, core, &record::ReadingEntry::core) == readings.end();
}

void ScanSettling::give(record::CoreId core, const std::string& scan, const std::optional<field::ScanPlace>& place) {
    const record::CoreEntry* before = core_of(desk_.overview(), core);
    if (before == nullptr || scan.empty() || making_) {
        return;
    }
    const QString name = QString::fromStdString(before->core.id);
    if (!can_change(core)) {
        emit told(tr("%1 is read already: its scan stays.").arg(name));
        return;
    }
    Change change{*before, *before, {}};
    change.after.core.scan = scan;
    field::set_scan_place(change.after.core, place);
    const QString shown = QString::fromStdString(scan);
    change.what =
        place ? tr("%1 gets the scan %2, place %3").arg(name, shown, QString::fromStdString(field::text_of(*place)))
              : tr("%1 gets the scan %2").arg(name, shown);
    note(scan);
    make(change, true);
}

void ScanSettling::take_from(record::CoreId core) {
    const record::CoreEntry* before = core_of(desk_.overview(), core);
    if (before == nullptr || before->core.scan.empty() || making_) {
        return;
    }
    const QString name = QString::fromStdString(before->core.id);
    if (!can_change(core)) {
        emit told(tr("%1 is read already: its scan stays.").arg(name));
        return;
    }
    Change change{*before, *before,
                  tr("%1 has the scan %2 no more").arg(name, QString::fromStdString(before->core.scan))};
    change.after.core.scan.clear();
    field::set_scan_place(change.after.core, std::nullopt);
    make(change, true);
}

void ScanSettling::take_back() {
    if (changes_.empty() || making_) {
        return;
    }
    const Change last = std::move(changes_.back());
    changes_.pop_back();
    make({last.after, last.before, tr("Take back: %1").arg(last.what)}, false);
}

void ScanSettling::make(const Change& change, bool keep) {
    making_ = true;
    desk_.change_details(change.before, change.after, change.what, [this, change, keep](bool done) {
        making_ = false;
        if (done && keep) {
            changes_.push_back(change);
        }
        look();
    });
}

/// Computes the checksum that a scan without a core has not.
void ScanSettling::note(const std::string& scan) {
    const auto& scans = desk_.overview().scans;
    const auto known = std::ranges::find(scans, scan, &record::ScanEntry::path);
    if (known == scans.end() || !known->sha256.empty()) {
        return;
    }
    desk_.store().ask<void>(
        [scan, overview = desk_.overview(), allowed = desk_.allowed(),
         stamp = desk_.stamp()](record::Project& project) {
            return record::find_scan(overview.folder, scan, overview.scans, allowed)
                .and_then([&](const record::FoundScan& found) { return record::scan_entry(found.file, scan); })
                .and_then([&](const record::ScanEntry& entry) { return project.put_scan(entry, stamp); });
        },
        [this](const Outcome<void>& done) {
            if (!done) {
                emit told(QString::fromStdString(done.error().line()));
            }
        });
}

void ScanSettling::add(const QStringList& files) {
    for (const QString& file : files) {
        const auto place = record::real_place(file.toStdString());
        const auto relative = place.lexically_relative(record::real_place(desk_.overview().folder));
        if (!record::stays_inside(relative)) {
            emit told(tr("%1 lies outside of the project's folder. Put it into that folder first.").arg(file));
            continue;
        }
        desk_.store().ask<void>(
            [place, path = relative.generic_string(), stamp = desk_.stamp()](record::Project& project) {
                return record::scan_entry(place, path).and_then([&](const record::ScanEntry& entry) {
                    return project.put_scan(entry, stamp);
                });
            },
            [this](const Outcome<void>& done) {
                if (!done) {
                    emit told(QString::fromStdString(done.error().line()));
                }
            });
    }
    look();
}

} // namespace pithward::bench
