// What is read from a project.
#include "libcore/edit/apply.h"
#include "libcore/record/history_rows.h"
#include "libcore/record/project_store.h"
#include "libcore/record/reading_rows.h"
#include "libcore/record/scan_rows.h"
#include "libcore/record/site_rows.h"

namespace pithward::record {

namespace {

ReadingEntry reading_entry(const QSqlQuery& row) {
    return {.id = ReadingId{row.value(0).toLongLong()},
            .core = CoreId{row.value(1).toLongLong()},
            .revision = row.value(2).toLongLong(),
            .analyst = text_from(row.value(3)),
            .state = text_from(row.value(4)),
            .boundaries = row.value(5).toInt(),
            .looked_at = row.value(6).toInt(),
            .in_bulk = row.value(7).toInt(),
            .findings = row.value(8).toInt(),
            .open_findings = row.value(9).toInt()};
}

/// The fault of a reading that can't be read, with the project and the reading named where it names no place.
Fault in_project(const std::filesystem::path& file, ReadingId id, Fault fault) {
    if (fault.where.empty()) {
        fault.where = file.string() + ", reading " + std::to_string(id.value);
    }
    return fault;
}

/// Reads every row of a query with `read`.
template <typename Read>
auto all_rows(Outcome<QSqlQuery> rows, Read read) -> Outcome<std::vector<decltype(read(*rows))>> {
    if (!rows) {
        return tl::unexpected(std::move(rows.error()));
    }
    std::vector<decltype(read(*rows))> all;
    while (rows->next()) {
        all.push_back(read(*rows));
    }
    return all;
}

} // namespace

Outcome<std::vector<CoreEntry>> Project::cores() const {
    return read_cores(store_->connection());
}

Outcome<std::vector<ReadingEntry>> Project::readings() const {
    return all_rows(
        store_->connection().run(
            "SELECT reading.id, core, revision, analyst, reading.state, COALESCE(b.n, 0), COALESCE(b.looked, 0), "
            "COALESCE(b.bulk, 0), COALESCE(f.n, 0), COALESCE(f.open, 0) FROM reading LEFT JOIN (SELECT reading, "
            "COUNT(*) "
            "AS n, SUM(CASE WHEN confirmation = 'looked at' THEN 1 ELSE 0 END) AS looked, SUM(CASE WHEN confirmation = "
            "'in bulk' THEN 1 ELSE 0 END) AS bulk FROM boundary GROUP BY reading) AS b ON b.reading = reading.id LEFT "
            "JOIN (SELECT reading, COUNT(*) AS n, SUM(CASE WHEN state = 'open' THEN 1 ELSE 0 END) AS open FROM finding "
            "GROUP BY reading) AS f ON f.reading = reading.id ORDER BY core, reading.id"),
        reading_entry);
}

Outcome<std::vector<ScanEntry>> Project::scans() const {
    return read_scans(store_->connection());
}

Outcome<std::vector<Person>> Project::people() const {
    return all_rows(store_->connection().run("SELECT name, role FROM person ORDER BY name"), [](const QSqlQuery& row) {
        return Person{text_from(row.value(0)), text_from(row.value(1))};
    });
}

Outcome<std::vector<HistoryEntry>> Project::history(std::optional<CoreId> core) const {
    return read_history(store_->connection(), core);
}

Outcome<Reading> Project::reading(ReadingId id) const {
    return read_reading(store_->connection(), id)
        .and_then([](Reading reading) { return readied(std::move(reading)); })
        .map_error([&](Fault fault) { return in_project(file(), id, std::move(fault)); });
}

Outcome<Document> Project::document(ReadingId id) const {
    return store_->load(id).map_error([&](Fault fault) { return in_project(file(), id, std::move(fault)); });
}

} // namespace pithward::record
