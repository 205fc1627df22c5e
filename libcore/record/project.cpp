#include "libcore/record/project.h"

#include "libcore/edit/apply.h"
#include "libcore/record/curve_bytes.h"
#include "libcore/record/history_rows.h"
#include "libcore/record/project_header.h"
#include "libcore/record/reading_rows.h"
#include "libcore/record/schema.h"
#include "libcore/record/site_rows.h"

#include <QDateTime>
#include <functional>

namespace pithward::record {

namespace {

bool ended_uncleanly(const std::filesystem::path& file) {
    std::error_code error;
    return std::filesystem::exists(file.string() + "-wal", error) ||
           std::filesystem::exists(file.string() + "-journal", error);
}

Outcome<void> statement(const Connection& connection, const char* text, const QVariantList& values) {
    return connection.run(text, values).map([](const QSqlQuery&) {});
}

Outcome<void> insert_scan(const Connection& connection, const ScanEntry& scan) {
    return statement(connection, "INSERT INTO scan (path, bytes, sha256) VALUES (?, ?, ?)",
                     {to_sql(scan.path), to_sql(scan.bytes), to_sql(scan.sha256)});
}

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

/// The connection, and the reading that was edited last: most edits follow one on the same reading.
class Project::Store {
public:
    explicit Store(std::unique_ptr<Connection> connection)
        : connection_(std::move(connection)) {}

    [[nodiscard]] const Connection& connection() const { return *connection_; }

    /// Runs a change and what it leaves in the history as one transaction.
    Outcome<void> change(const std::function<Outcome<void>()>& parts) {
        auto transaction = Transaction::begin(*connection_);
        if (!transaction) {
            return tl::unexpected(std::move(transaction.error()));
        }
        auto done = parts();
        return done ? transaction->commit() : done;
    }

    [[nodiscard]] Outcome<Document> load(ReadingId id) const {
        auto reading = read_reading(*connection_, id);
        auto log = reading ? read_log(*connection_, id) : tl::unexpected(reading.error());
        if (!log) {
            return tl::unexpected(std::move(log.error()));
        }
        return Document::open(std::move(*reading), std::move(*log));
    }

    using Making = std::function<Outcome<bool>(Document&)>;

    /// Changes the document of a reading and writes what that left in its log.
    Outcome<std::optional<EditRecord>> make(ReadingId id, const Making& making) {
        std::optional<EditRecord> made;
        auto done = change([&] {
            return refresh(id)
                .and_then([&] { return making(*document_); })
                .and_then([&](bool changed) -> Outcome<void> {
                    if (!changed) {
                        return {};
                    }
                    made = document_->log().back();
                    return write(id, *made);
                });
        });
        if (!done) {
            document_.reset(); // what is in memory may be ahead of the file
            return tl::unexpected(std::move(done.error()));
        }
        return made;
    }

private:
    /// Loads the document unless it is there and as the file holds it. Within the transaction, so it stays so.
    Outcome<void> refresh(ReadingId id) {
        const auto row = connection_->value("SELECT revision FROM reading WHERE id = ?", {to_sql(id.value)});
        if (!row) {
            return tl::unexpected(row.error());
        }
        if (document_ && document_->reading().id == id && document_->revision() == row->toLongLong()) {
            return {};
        }
        document_.reset();
        return load(id).map([&](Document document) { document_ = std::move(document); });
    }

    Outcome<void> write(ReadingId id, const EditRecord& record) {
        const auto core = connection_->value("SELECT core FROM reading WHERE id = ?", {to_sql(id.value)});
        auto done = core ? write_edit(*connection_, id, record.edit) : tl::unexpected(core.error());
        if (done) {
            done = statement(*connection_, "UPDATE reading SET revision = ? WHERE id = ?",
                             {to_sql(record.id.value), to_sql(id.value)});
        }
        return done ? write_record(*connection_, CoreId{core->toLongLong()}, id, record,
                                   label_of(document_->log(), record))
                    : done;
    }

    std::unique_ptr<Connection> connection_;
    std::optional<Document> document_;
};

Project::Project(std::unique_ptr<Store> store)
    : store_(std::move(store)) {}
Project::~Project() = default;
Project::Project(Project&&) noexcept = default;
Project& Project::operator=(Project&&) noexcept = default;

Outcome<Project> Project::create(const std::filesystem::path& file, std::span<const Site> sites,
                                 std::span<const ScanEntry> scans, const EditStamp& stamp) {
    std::error_code error;
    if (std::filesystem::exists(std::filesystem::symlink_status(file, error))) {
        return fail(file.string(), "the file is there already", "choose another name");
    }
    const auto made = [&]() -> Outcome<Project> {
        auto connection = Connection::open(file, Connection::Mode::Create);
        auto ready = connection ? migrate(**connection, migration_steps()) : tl::unexpected(connection.error());
        if (!ready) {
            return tl::unexpected(std::move(ready.error()));
        }
        auto store = std::make_unique<Store>(std::move(*connection));
        ready = store->change([&] {
            auto written = write_sites(store->connection(), sites);
            for (const ScanEntry& scan : scans) {
                written = written ? insert_scan(store->connection(), scan) : written;
            }
            return written ? write_deed(store->connection(), {.label = "Make the project"}, stamp) : written;
        });
        return ready ? Outcome<Project>(Project(std::move(store))) : tl::unexpected(std::move(ready.error()));
    };
    auto project = made();
    if (!project) {
        std::filesystem::remove(file, error); // no half of a project stays
    }
    return project;
}

Outcome<Project> Project::open(const std::filesystem::path& file, Access access) {
    const bool unclean = ended_uncleanly(file);
    auto connection = Connection::open(file, access == Access::Read ? Connection::Mode::Read : Connection::Mode::Write);
    if (!connection) {
        return tl::unexpected(std::move(connection.error()));
    }
    const auto version = (*connection)->version();
    if (!version) {
        return tl::unexpected(version.error());
    }
    if (*version > project_version) {
        return tl::unexpected(newer_than_known(file, *version));
    }
    Outcome<void> sound;
    if (*version < project_version) {
        if (access == Access::Read) {
            return fail(file.string(), "an older Pithward wrote this project", "open it once for writing");
        }
        sound = migrate(**connection, migration_steps());
    }
    sound = sound ? check_tables(**connection) : sound;
    if (sound && unclean) {
        sound = (*connection)->check();
    }
    if (!sound) {
        return tl::unexpected(std::move(sound.error()));
    }
    return Project(std::make_unique<Store>(std::move(*connection)));
}

const std::filesystem::path& Project::file() const {
    return store_->connection().file();
}

std::filesystem::path Project::folder() const {
    return std::filesystem::absolute(file()).parent_path();
}

const std::string& Project::remark() const {
    return store_->connection().remark();
}

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
    return all_rows(store_->connection().run("SELECT path, bytes, sha256 FROM scan ORDER BY path"),
                    [](const QSqlQuery& row) {
                        return ScanEntry{text_from(row.value(0)), row.value(1).toLongLong(), text_from(row.value(2))};
                    });
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
    return read_reading(store_->connection(), id).and_then([](Reading reading) { return readied(std::move(reading)); });
}

Outcome<Document> Project::document(ReadingId id) const {
    return store_->load(id);
}

Outcome<ReadingId> Project::add_reading(CoreId core, Reading reading, const std::string& label,
                                        const EditStamp& stamp) {
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
    auto done = store_->change([&] {
        return connection.value("SELECT COALESCE(MAX(id), 0) + 1 FROM reading").and_then([&](const QVariant& next) {
            ready->id = ReadingId{next.toLongLong()};
            auto written = write_reading(connection, *ready, core.value);
            if (written) {
                written = statement(connection,
                                    "UPDATE core SET accepted_reading = ? WHERE id = ? AND accepted_reading IS NULL",
                                    {to_sql(ready->id.value), to_sql(core.value)});
            }
            return written ? write_deed(connection, {core, ready->id, label, {}}, stamp) : written;
        });
    });
    if (!done) {
        return tl::unexpected(std::move(done.error()));
    }
    return ready->id;
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
            statement(connection, "UPDATE core SET accepted_reading = ? WHERE id = ?", {to_sql(reading.value), *core});
        const std::string label = "Accept reading " + std::to_string(reading.value);
        return done ? write_deed(connection, {CoreId{core->toLongLong()}, reading, label, {}}, stamp) : done;
    });
}

Outcome<void> Project::put_scan(const ScanEntry& scan, const EditStamp& stamp) {
    const Connection& connection = store_->connection();
    return store_->change([&] {
        auto done = statement(connection, "DELETE FROM scan WHERE path = ?", {to_sql(scan.path)});
        if (done) {
            done = insert_scan(connection, scan);
        }
        return done ? write_deed(connection, {.label = "Note the scan " + scan.path}, stamp) : done;
    });
}

Outcome<void> Project::put_person(const Person& person, const EditStamp& stamp) {
    const Connection& connection = store_->connection();
    return store_->change([&] {
        auto done = statement(connection, "DELETE FROM person WHERE name = ?", {to_sql(person.name)});
        if (done) {
            done = statement(connection, "INSERT INTO person (name, role) VALUES (?, ?)",
                             {to_sql(person.name), to_sql(person.role)});
        }
        return done ? write_deed(connection, {.label = "Enter " + person.name + ", " + person.role}, stamp) : done;
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

Outcome<std::int64_t> Project::changes_by_others() const {
    return store_->connection().changes_by_others();
}

Outcome<void> Project::check() const {
    return store_->connection().check();
}

Outcome<void> Project::copy_to(const std::filesystem::path& copy) const {
    return store_->connection().copy_to(copy);
}

std::string utc_now() {
    return QDateTime::currentDateTimeUtc().toString(Qt::ISODateWithMs).toStdString();
}

} // namespace pithward::record
