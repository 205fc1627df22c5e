#include "app/bench/look/sentences.h"
#include "app/project/detail_change.h"
#include "app/project/project_desk.h"
#include "app/project/written_edit.h"
#include "libcore/edit/edit_log.h"

#include <algorithm>

// What is changed on the bench, on its way to the store and back.

namespace pithward::bench {

void ProjectDesk::write(ReadingId reading, const EditRecord& record) {
    if (!store_) {
        return;
    }
    const Document* document = model_.find_reading(reading);
    std::optional<EditRecord> named;
    if (document != nullptr && record.undoes) {
        const auto found = std::ranges::find(document->log(), *record.undoes, &EditRecord::id);
        named = found != document->log().end() ? std::optional(*found) : std::nullopt;
    }
    ++pending_[reading];
    store_->ask<std::optional<EditRecord>>(
        [reading, record, named](record::Project& project) { return written_edit(project, reading, record, named); },
        [this, reading, record](const Outcome<std::optional<EditRecord>>& answer) {
            answered(reading, record, answer);
        });
}

void ProjectDesk::answered(ReadingId reading, const EditRecord& record,
                           const Outcome<std::optional<EditRecord>>& answer) {
    const bool last = --pending_[reading] == 0;
    if (!answer) {
        emit told(tr("Taken back, since it could not be written: %1. %2")
                      .arg(in_window_language(label_of(record.edit)), QString::fromStdString(answer.error().line())));
        emit refused();
    }
    changed_.insert(reading);
    // Where others have worked on the reading too, the file has more than is shown here.
    if (!answer || !*answer || (*answer)->id != record.id) {
        stale_.insert(reading);
    }
    if (last && stale_.contains(reading)) {
        reload(reading);
    }
    read_overview_soon();
}

void ProjectDesk::reload(ReadingId reading) {
    if (pending_[reading] > 0) {
        stale_.insert(reading);
        return;
    }
    stale_.erase(reading);
    store_->ask<Document>([reading](record::Project& project) { return project.document(reading); },
                          [this, reading](Outcome<Document> document) {
                              if (!document) {
                                  tell(document.error());
                              } else if (pending_[reading] > 0) {
                                  stale_.insert(reading);
                              } else if (const BenchScan* scan = scan_of(reading)) {
                                  model_.put_reading(scan->id, std::move(*document));
                              }
                          });
}

void ProjectDesk::make(ReadingId reading, Building build, std::function<void(bool)> done) {
    using Made = std::optional<EditRecord>;
    store_->ask<Made>(
        [reading, build = std::move(build), stamp = stamp()](record::Project& project) {
            return project.document(reading).and_then(build).and_then(
                [&](const Edit& edit) { return project.edit(reading, edit, stamp); });
        },
        [this, reading, done = std::move(done)](const Outcome<Made>& made) {
            if (!made) {
                tell(made.error());
            } else if (model_.find_reading(reading) != nullptr) {
                reload(reading);
            }
            changed_.insert(reading);
            read_overview_now();
            if (done) {
                done(made.has_value());
            }
        });
}

void ProjectDesk::change_details(const record::CoreEntry& before, const record::CoreEntry& after, const QString& label,
                                 std::function<void(bool)> done) {
    using Readings = std::vector<ReadingId>;
    store_->ask<Readings>(
        [before, after, label = label.toStdString(), stamp = stamp()](record::Project& project) {
            return bench::change_details(project, before, after, label, stamp);
        },
        [this, accepted = before.accepted, done = std::move(done)](const Outcome<Readings>& changed) {
            if (!changed) {
                tell(changed.error());
            } else if (accepted) {
                changed_.insert(*accepted); // the height of the core bears on the ages of its tree
            }
            for (const ReadingId reading : changed.value_or(Readings{})) {
                if (model_.find_reading(reading) != nullptr) {
                    reload(reading);
                }
            }
            read_overview_now();
            done(changed.has_value());
        });
}

void ProjectDesk::accept(ReadingId reading) {
    store_->ask<void>([reading, stamp = stamp()](record::Project& project) { return project.accept(reading, stamp); },
                      [this](const Outcome<void>& done) {
                          if (!done) {
                              tell(done.error());
                          }
                          read_overview_now();
                      });
}

} // namespace pithward::bench
