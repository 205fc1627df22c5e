#include "app/project/project_desk.h"

#include "libcore/record/tree_ages.h"

#include <algorithm>
#include <utility>

// What of a project is open: the file, what it holds, who works on it.

namespace pithward::bench {

ProjectDesk::ProjectDesk(BenchControl& control, ScanOpener opener, QObject* parent)
    : QObject(parent)
    , control_(control)
    , model_(control.model())
    , opener_(std::move(opener)) {
    constexpr int pause_ms = 200; // several edits in a row are followed by one look at the project
    soon_.setSingleShot(true);
    soon_.setInterval(pause_ms);
    connect(&soon_, &QTimer::timeout, this, &ProjectDesk::read_overview_now);
    connect(&model_, &BenchModel::made, this, &ProjectDesk::write);
    connect(&model_, &BenchModel::proposed, this, &ProjectDesk::keep_proposed);
    connect(&control_, &BenchControl::project_wanted, this, &ProjectDesk::open);
    control_.name_scans_by([this](const std::string& path) { return name_in_project(path); });
}

ProjectDesk::~ProjectDesk() = default;

void ProjectDesk::open(const QString& file) {
    opening_ = std::make_unique<Store>();
    Store* store = opening_.get();
    store->open(file.toStdString(), [this, store](Outcome<void> done) {
        if (!done) {
            give_up_opening(done.error());
            return;
        }
        store->ask<ProjectOverview>(read_overview, [this](Outcome<ProjectOverview> overview) {
            if (overview) {
                take(std::move(opening_), std::move(*overview));
            } else {
                give_up_opening(overview.error());
            }
        });
    });
}

void ProjectDesk::give_up_opening(const Fault& fault) {
    opening_.release()->deleteLater(); // it is the store that is just answering
    tell(fault);
}

void ProjectDesk::take(std::unique_ptr<Store> store, ProjectOverview overview) {
    for (const BenchScan& scan : std::vector(model_.scans())) {
        if (scan.recorded) {
            model_.remove_scan(scan.id);
        }
    }
    store_ = std::move(store); // the one before is closed when its queue is done
    pending_.clear();
    stale_.clear();
    changed_.clear();
    overview_asked_ = false;
    overview_ = std::move(overview);
    checksums_ = std::make_unique<Checksums>();
    connect(checksums_.get(), &Checksums::computed, this, &ProjectDesk::put_scan);
    sum_up_scans();
    model_.let_recorded_only_be_seen(!overview_.can_change);
    connect(store_.get(), &Store::waiting_changed, this, &ProjectDesk::waiting_changed);
    connect(store_.get(), &Store::changed_by_others, this, &ProjectDesk::read_overview_now);
    if (!overview_.remark.empty()) {
        emit told(QString::fromStdString(overview_.remark));
    }
    emit opened();
    emit overview_changed();
}

void ProjectDesk::set_person(const record::Person& person) {
    model_.set_person(person.name);
    if (store_ && overview_.can_change && std::ranges::find(overview_.people, person) == overview_.people.end()) {
        store_->ask<void>(
            [person, stamp = stamp()](record::Project& project) { return project.put_person(person, stamp); },
            [this](const Outcome<void>& done) {
                if (!done) {
                    tell(done.error());
                }
                read_overview_soon();
            });
    }
    emit overview_changed();
}

void ProjectDesk::read_overview_soon() {
    soon_.start();
}

void ProjectDesk::read_overview_now() {
    soon_.stop();
    if (!store_ || std::exchange(overview_asked_, true)) {
        return;
    }
    if (!changed_.empty() && overview_.can_change) {
        // What the cores of a tree say of each other follows the edits of each, as edits of their own.
        const std::set<ReadingId> changed = std::exchange(changed_, {});
        store_->ask<void>([changed = std::vector(changed.begin(), changed.end()), version = stamp().program_version](
                              record::Project& project) { return record::follow_tree_ages(project, changed, version); },
                          [this](const Outcome<void>& done) {
                              if (!done) {
                                  tell(done.error());
                              }
                          });
    }
    store_->ask<ProjectOverview>(read_overview, [this](Outcome<ProjectOverview> overview) {
        overview_asked_ = false;
        follow_overview(std::move(overview));
    });
}

void ProjectDesk::follow_overview(Outcome<ProjectOverview> overview) {
    if (!overview) {
        tell(overview.error());
        return;
    }
    overview_ = std::move(*overview);
    sum_up_scans();
    for (const record::ReadingEntry& entry : overview_.readings) {
        const Document* shown = model_.find_reading(entry.id);
        if (scan_of(entry.id) != nullptr && (shown == nullptr || shown->revision() != entry.revision)) {
            reload(entry.id);
        }
    }
    for (const BenchScan& scan : model_.scans()) {
        const record::CoreEntry* core = scan.recorded ? core_on(scan.opened->name()) : nullptr;
        if (core != nullptr) {
            model_.put_field(scan.id, {overview_.file.filename().string(), core->site, core->tree, core->core});
        }
    }
    emit overview_changed();
}

std::optional<record::CoreId> ProjectDesk::present() const {
    const Document* document = model_.document();
    const record::ReadingEntry* reading =
        document != nullptr && model_.home()->recorded ? reading_of(overview_, document->reading().id) : nullptr;
    if (reading != nullptr) {
        return reading->core;
    }
    const record::CoreEntry* core =
        model_.scan() != nullptr && model_.scan()->recorded ? core_on(model_.scan()->opened->name()) : nullptr;
    return core != nullptr ? std::optional(core->id) : std::nullopt;
}

void ProjectDesk::tell(const Fault& fault) {
    emit told(QString::fromStdString(fault.line()));
}

} // namespace pithward::bench
