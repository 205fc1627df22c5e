#include "libcore/record/schema.h"

#include "libcore/record/project_header.h"
#include "libcore/record/transaction.h"

#include <algorithm>
#include <array>
#include <map>
#include <string>

namespace pithward::record {

namespace {

// The current state is in tables of its own and never replayed from the history. `value`, `path` and `entries` are JSON
// as edits hold it (libcore/edit/edit_json.h); the columns beside them are what lists and counts are made from.
constexpr std::array first_version{
    "CREATE TABLE person (name TEXT PRIMARY KEY, role TEXT NOT NULL)",
    "CREATE TABLE site (id INTEGER PRIMARY KEY, name TEXT NOT NULL UNIQUE, latitude REAL, longitude REAL, "
    "elevation_m REAL)",
    "CREATE TABLE tree (id INTEGER PRIMARY KEY, site INTEGER NOT NULL REFERENCES site (id), name TEXT NOT NULL, "
    "species TEXT NOT NULL, wood TEXT NOT NULL, living INTEGER, dbh_cm REAL, bark_mm REAL, lean_azimuth_deg REAL, "
    "lean_deg REAL, slope_aspect_deg REAL, UNIQUE (site, name))",
    "CREATE TABLE core (id INTEGER PRIMARY KEY, tree INTEGER NOT NULL REFERENCES tree (id), name TEXT NOT NULL, "
    "date_cored TEXT NOT NULL, outer_wood TEXT NOT NULL, pith TEXT NOT NULL, core_height_cm REAL, azimuth_deg REAL, "
    "borer_mm REAL, pieces INTEGER, scan TEXT NOT NULL, collector TEXT NOT NULL, notes TEXT NOT NULL, "
    "accepted_reading INTEGER, UNIQUE (tree, name))",
    "CREATE TABLE core_column (core INTEGER NOT NULL REFERENCES core (id), name TEXT NOT NULL, text TEXT NOT NULL, "
    "PRIMARY KEY (core, name))",
    // A path is relative to the project's folder, with / between its parts. The checksum is empty until computed.
    "CREATE TABLE scan (path TEXT PRIMARY KEY, bytes INTEGER NOT NULL, sha256 TEXT NOT NULL)",
    "CREATE TABLE reading (id INTEGER PRIMARY KEY, core INTEGER NOT NULL REFERENCES core (id), revision INTEGER NOT "
    "NULL, analyst TEXT NOT NULL, state TEXT NOT NULL, path TEXT NOT NULL, entries TEXT NOT NULL)",
    "CREATE INDEX reading_of_core ON reading (core)",
    "CREATE TABLE calibration (reading INTEGER NOT NULL REFERENCES reading (id), scan TEXT NOT NULL, px_per_mm_x REAL "
    "NOT NULL, px_per_mm_y REAL NOT NULL, relative_sd REAL NOT NULL, source TEXT NOT NULL, "
    "PRIMARY KEY (reading, scan))",
    // Places in pixels of the scan, tangents in radians, lengths in millimetres.
    "CREATE TABLE boundary (reading INTEGER NOT NULL REFERENCES reading (id), id INTEGER NOT NULL, leg INTEGER NOT "
    "NULL, x REAL NOT NULL, y REAL NOT NULL, tangent REAL NOT NULL, sd REAL NOT NULL, confidence REAL NOT NULL, flags "
    "TEXT NOT NULL, curve BLOB NOT NULL, latewood REAL, sd_assumed INTEGER NOT NULL, origin TEXT NOT NULL, "
    "confirmation TEXT NOT NULL, note TEXT NOT NULL, PRIMARY KEY (reading, id))",
    "CREATE TABLE candidate (reading INTEGER NOT NULL REFERENCES reading (id), id INTEGER NOT NULL, leg INTEGER NOT "
    "NULL, x REAL NOT NULL, y REAL NOT NULL, tangent REAL NOT NULL, sd REAL NOT NULL, confidence REAL NOT NULL, flags "
    "TEXT NOT NULL, curve BLOB NOT NULL, latewood REAL, reason TEXT NOT NULL, PRIMARY KEY (reading, id))",
    "CREATE TABLE path_break (reading INTEGER NOT NULL REFERENCES reading (id), id INTEGER NOT NULL, value TEXT NOT "
    "NULL, PRIMARY KEY (reading, id))",
    "CREATE TABLE absent_ring (reading INTEGER NOT NULL REFERENCES reading (id), id INTEGER NOT NULL, value TEXT NOT "
    "NULL, PRIMARY KEY (reading, id))",
    "CREATE TABLE finding (reading INTEGER NOT NULL REFERENCES reading (id), id INTEGER NOT NULL, state TEXT NOT NULL, "
    "value TEXT NOT NULL, PRIMARY KEY (reading, id))",
    // Everything that was ever done, in order. An edit of a reading has its number within it, and its JSON as `body`.
    "CREATE TABLE history (id INTEGER PRIMARY KEY, at TEXT NOT NULL, who TEXT NOT NULL, program TEXT NOT NULL, core "
    "INTEGER REFERENCES core (id), reading INTEGER REFERENCES reading (id), revision INTEGER, undoes INTEGER, label "
    "TEXT NOT NULL, body TEXT NOT NULL)",
    "CREATE UNIQUE INDEX edit_of_reading ON history (reading, revision)",
    "CREATE INDEX history_of_core ON history (core)",
};

constexpr std::array<MigrationStep, project_version> steps_to_now{MigrationStep(first_version)};

Outcome<void> do_step(Connection& connection, const MigrationStep& step, int to) {
    auto transaction = Transaction::begin(connection);
    if (!transaction) {
        return tl::unexpected(std::move(transaction.error()));
    }
    // Another program may have done it while this one waited.
    const auto version = connection.version();
    if (!version || *version >= to) {
        return version ? Outcome<void>() : tl::unexpected(version.error());
    }
    for (const char* statement : step) {
        if (auto done = connection.run(statement); !done) {
            return tl::unexpected(std::move(done.error()));
        }
    }
    if (auto numbered = connection.set_version(to); !numbered) {
        return numbered;
    }
    return transaction->commit();
}

Outcome<void> copy_first(const Connection& connection, int version) {
    const std::string base = connection.file().string() + ".version-" + std::to_string(version);
    std::filesystem::path copy = base;
    for (int n = 2; std::filesystem::exists(copy); ++n) {
        copy = base + "-" + std::to_string(n);
    }
    return connection.copy_to(copy);
}

using Names = std::map<std::string, std::string>;

/// Tables and indexes by name, those left out that SQLite makes for keys.
Outcome<Names> names_in(const Connection& connection) {
    auto query = connection.run("SELECT name, type FROM sqlite_master WHERE name NOT LIKE 'sqlite!_%' ESCAPE '!'");
    if (!query) {
        return tl::unexpected(std::move(query.error()));
    }
    Names names;
    while (query->next()) {
        names[text_from(query->value(0))] = text_from(query->value(1));
    }
    return names;
}

Names names_made() {
    Names names;
    for (const char* statement : first_version) {
        const std::string text(statement);
        const bool table = text.starts_with("CREATE TABLE ");
        const std::size_t start = table ? 13 : text.find("INDEX ") + 6;
        names[text.substr(start, text.find(' ', start) - start)] = table ? "table" : "index";
    }
    return names;
}

} // namespace

std::span<const MigrationStep> migration_steps() {
    return steps_to_now;
}

Outcome<void> migrate(Connection& connection, std::span<const MigrationStep> steps) {
    const auto version = connection.version();
    if (!version) {
        return tl::unexpected(version.error());
    }
    const int newest = static_cast<int>(steps.size());
    if (*version > newest) {
        return tl::unexpected(newer_than_known(connection.file(), *version));
    }
    if (*version > 0 && *version < newest) {
        if (auto copied = copy_first(connection, *version); !copied) {
            return copied;
        }
    }
    for (int done = std::max(*version, 0); done < newest; ++done) {
        if (auto taken = do_step(connection, steps[static_cast<std::size_t>(done)], done + 1); !taken) {
            return taken;
        }
    }
    return {};
}

Outcome<void> check_tables(const Connection& connection) {
    const auto stamp = connection.value("PRAGMA application_id");
    const auto names = names_in(connection);
    if (!stamp || !names) {
        return tl::unexpected(stamp ? names.error() : stamp.error());
    }
    if (stamp->toLongLong() != project_application_id || *names != names_made()) {
        return tl::unexpected(no_project(connection.file()));
    }
    return {};
}

} // namespace pithward::record
