// What is written to a project.
#include "libcore/edit/apply.h"
#include "libcore/record/curve_bytes.h"
#include "libcore/record/history_rows.h"
#include "libcore/record/project_store.h"
#include "libcore/record/reading_rows.h"
#include "libcore/record/scan_rows.h"
#include "libcore/record/site_rows.h"

namespace pithward::record {

Outcome<ReadingId> Project::add_reading(CoreId core, Reading reading, const std::string& label,
                                        const EditStamp& stamp) {
    // Beside others it is always taken.
    return add_reading(core, std::move(reading), label, stamp, Beside::Others)
        .map([](const std::optional<ReadingId>& id) { return *id; });
}

Outcome<std::optional<ReadingId>> Project::add_reading(CoreId core, Reading reading, const std::string& label,
                                                       const EditStamp& stamp, Beside beside) {
    for (Boundary& boundary : reading.boundaries) {
        boundary.curve = on_curve_grid(std::move(boundary.curve));
    }
    for (Candidate& candidate : reading.not_annual) {
        candidate.curve = on_curve_grid(std::move(candidate.curve));
    }
    auto ready = readied(std::move(reading));
    if (!ready) {
        return tl::unexpected(std::move(ready.error()));
    }
    const Connection& connection = store_->connection();
    bool taken = true;
    auto done = store_->change([&]() -> Outcome<void> {
        const auto others = connection.value("SELECT COUNT(*) FROM reading WHERE core = ?", {to_sql(core.value)});
        if (!others) {
            return tl::unexpected(others.error());
        }
        taken = beside == Beside::Others || others->toLongLong() == 0;
        if (!taken) {
            return {};
        }
        return connection.value("SELECT COALESCE(MAX(id), 0) + 1 FROM reading").and_then([&](const QVariant& next) {
            ready->id = ReadingId{next.toLongLong()};
            auto written = write_reading(connection, *ready, core.value);
            if (written) {
                written =
                    connection.change("UPDATE core SET accepted_reading = ? WHERE id = ? AND accepted_reading IS NULL",
                                      {to_sql(ready->id.value), to_sql(core.value)});
            }
            return written ? write_deed(connection, {core, ready->id, label, {}}, stamp) : written;
        });
    });
    if (!done) {
        return tl::unexpected(std::move(done.error()));
    }
    return taken ? std::optional(ready->id) : std::nullopt;
}

Outcome<void> Project::accept(ReadingId reading, const EditStamp& stamp) {
    const Connection& connection = store_->connection();
    return store_->change([&]() -> Outcome<void> {
        const auto core = connection.value("SELECT core FROM reading WHERE id = ?", {to_sql(reading.value)});
        if (!core) {
            return tl::unexpected(core.error());
        }
        if (core->isNull()) {
            return fail(file().string(), "this reading is not there", "choose another one");
        }
        auto done =
            connection.change("UPDATE core SET accepted_reading = ? WHERE id = ?", {to_sql(reading.value), *core});
        const std::string label = "Accept reading " + std::to_string(reading.value);
        return done ? write_deed(connection, {CoreId{core->toLongLong()}, reading, label, {}}, stamp) : done;
    });
}

Outcome<void> Project::put_scan(const ScanEntry& scan, const EditStamp& stamp) {
    const Connection& connection = store_->connection();
    return store_->change([&] {
        auto done = connection.change("DELETE FROM scan WHERE path = ?", {to_sql(scan.path)});
        if (done) {
            done = insert_scan(connection, scan);
        }
        const std::string what = scan.sha256.empty() ? "Note the scan " : "Note the size and checksum of the scan ";
        return done ? write_deed(connection, {.label = what + scan.path}, stamp) : done;
    });
}

Outcome<void> Project::put_details(const CoreEntry& before, const CoreEntry& after, const std::string& label,
                                   const EditStamp& stamp) {
    const Connection& connection = store_->connection();
    return store_->change([&] {
        auto done = update_details(connection, before, after);
        return done ? write_deed(connection, {.core = before.id, .label = label}, stamp) : done;
    });
}

Outcome<void> Project::put_person(const Person& person, const EditStamp& stamp) {
    const Connection& connection = store_->connection();
    const std::string label = "Enter " + person.name + (person.role.empty() ? "" : ", " + person.role);
    return store_->change([&] {
        auto done = connection.change("DELETE FROM person WHERE name = ?", {to_sql(person.name)});
        if (done) {
            done = connection.change("INSERT INTO person (name, role) VALUES (?, ?)",
                                     {to_sql(person.name), to_sql(person.role)});
        }
        return done ? write_deed(connection, {.label = label}, stamp) : done;
    });
}

Outcome<std::optional<EditRecord>> Project::edit(ReadingId reading, const Edit& edit, const EditStamp& stamp) {
    return store_->make(reading, [&](Document& document) { return document.make(edit, stamp); });
}

Outcome<std::optional<EditRecord>> Project::undo(ReadingId reading, const EditStamp& stamp) {
    return store_->make(reading, [&](Document& document) { return document.undo(stamp); });
}

Outcome<std::optional<EditRecord>> Project::redo(ReadingId reading, const EditStamp& stamp) {
    return store_->make(reading, [&](Document& document) { return document.redo(stamp); });
}

Outcome<std::optional<EditRecord>> Project::take_back(ReadingId reading, EditId record, const EditStamp& stamp) {
    return store_->make(reading, [&](Document& document) { return document.take_back(record, stamp); });
}

} // namespace pithward::record
