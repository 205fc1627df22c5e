#include "libcore/record/site_rows.h"

#include <map>

namespace pithward::record {

namespace {

/// The tables' own words, so that a word of the interface can change without them.
std::string field_pith_word(FieldPith pith) {
    switch (pith) {
    case FieldPith::Reached:
        return "reached";
    case FieldPith::Near:
        return "near";
    case FieldPith::Missed:
        return "missed";
    case FieldPith::Unknown:
        return "unknown";
    }
    return "unknown";
}

FieldPith field_pith_from(const std::string& text) {
    for (const FieldPith pith : {FieldPith::Reached, FieldPith::Near, FieldPith::Missed}) {
        if (field_pith_word(pith) == text) {
            return pith;
        }
    }
    return FieldPith::Unknown;
}

/// Columns of a table by name, with their values.
using Columns = std::vector<std::pair<const char*, QVariant>>;

Columns columns_of(const Core& core) {
    return {{"date_cored", to_sql(core.date_cored)},
            {"outer_wood", to_sql(word(core.outer))},
            {"pith", to_sql(field_pith_word(core.pith))},
            {"core_height_cm", to_sql(core.core_height_cm)},
            {"azimuth_deg", to_sql(core.azimuth_deg)},
            {"borer_mm", to_sql(core.borer_mm)},
            {"pieces", to_sql(core.pieces)},
            {"scan", to_sql(core.scan)},
            {"collector", to_sql(core.collector)},
            {"notes", to_sql(core.notes)}};
}

Columns columns_of(const Tree& tree) {
    return {{"species", to_sql(tree.species)},
            {"wood", to_sql(tree.wood ? word(*tree.wood) : std::string())},
            {"living", to_sql(tree.living ? std::optional<int>(*tree.living ? 1 : 0) : std::nullopt)},
            {"dbh_cm", to_sql(tree.dbh_cm)},
            {"bark_mm", to_sql(tree.bark_mm)},
            {"lean_azimuth_deg", to_sql(tree.lean_azimuth_deg)},
            {"lean_deg", to_sql(tree.lean_deg)},
            {"slope_aspect_deg", to_sql(tree.slope_aspect_deg)}};
}

Columns columns_of(const Site& site) {
    return {{"latitude", to_sql(site.latitude)},
            {"longitude", to_sql(site.longitude)},
            {"elevation_m", to_sql(site.elevation_m)}};
}

Outcome<void> insert(const Connection& connection, const std::string& table, const Columns& columns) {
    std::string names;
    std::string places;
    QVariantList values;
    for (const auto& [name, value] : columns) {
        names += (names.empty() ? "" : ", ") + std::string(name);
        places += places.empty() ? "?" : ", ?";
        values << value;
    }
    const std::string statement = "INSERT INTO " + table + " (" + names + ") VALUES (" + places + ")";
    return connection.change(statement.c_str(), values);
}

/// A row's columns with what stands before them: its number, what it belongs to, its name.
Columns with_keys(Columns keys, const Columns& columns) {
    keys.insert(keys.end(), columns.begin(), columns.end());
    return keys;
}

Outcome<void> write_core(const Connection& connection, std::int64_t id, std::int64_t tree, const Core& core) {
    auto done =
        insert(connection, "core",
               with_keys({{"id", to_sql(id)}, {"tree", to_sql(tree)}, {"name", to_sql(core.id)}}, columns_of(core)));
    for (const auto& [name, text] : core.others) {
        if (done) {
            done = insert(connection, "core_column",
                          {{"core", to_sql(id)}, {"name", to_sql(name)}, {"text", to_sql(text)}});
        }
    }
    return done;
}

bool same(const QVariant& one, const QVariant& other) {
    const auto text = [](const QVariant& value) { return value.isNull() ? QString() : value.toString(); };
    return text(one) == text(other);
}

/// Writes what differs between two states of a row, where the row still holds the first.
Outcome<void> update(const Connection& connection, const std::string& table, std::int64_t id, const Columns& before,
                     const Columns& after) {
    for (std::size_t i = 0; i < before.size(); ++i) {
        const auto& [name, was] = before[i];
        if (same(was, after[i].second)) {
            continue;
        }
        const std::string held = std::string("SELECT ") + name + " FROM " + table + " WHERE id = ?";
        const auto now = connection.value(held.c_str(), {to_sql(id)});
        if (!now) {
            return tl::unexpected(now.error());
        }
        if (!same(*now, was)) {
            return fail(connection.file().string(), std::string("somebody else has changed ") + name + " meanwhile",
                        "look at what it is now, and change that");
        }
        const std::string statement = "UPDATE " + table + " SET " + name + " = ? WHERE id = ?";
        if (auto done = connection.change(statement.c_str(), {after[i].second, to_sql(id)}); !done) {
            return done;
        }
    }
    return {};
}

/// The same for the columns that the sheet has beside the known ones.
Outcome<void> update_others(const Connection& connection, std::int64_t core,
                            const std::map<std::string, std::string>& before,
                            const std::map<std::string, std::string>& after) {
    std::map<std::string, std::pair<std::string, std::string>> changes;
    for (const auto& [name, text] : before) {
        changes[name].first = text;
    }
    for (const auto& [name, text] : after) {
        changes[name].second = text;
    }
    for (const auto& [name, change] : changes) {
        const auto& [was, is] = change;
        if (was == is) {
            continue;
        }
        const auto now =
            connection.value("SELECT COALESCE((SELECT text FROM core_column WHERE core = ? AND name = ?), '')",
                             {to_sql(core), to_sql(name)});
        if (!now) {
            return tl::unexpected(now.error());
        }
        if (text_from(*now) != was) {
            return fail(connection.file().string(), "somebody else has changed " + name + " meanwhile",
                        "look at what it is now, and change that");
        }
        auto done =
            connection.change("DELETE FROM core_column WHERE core = ? AND name = ?", {to_sql(core), to_sql(name)});
        if (done && !is.empty()) {
            done = insert(connection, "core_column",
                          {{"core", to_sql(core)}, {"name", to_sql(name)}, {"text", to_sql(is)}});
        }
        if (!done) {
            return done;
        }
    }
    return {};
}

/// Nothing where a text stands in the place of a number.
std::optional<CoreEntry> core_entry(const QSqlQuery& row) {
    int at = 0;
    const auto next = [&] { return row.value(at++); };
    bool sound = true;
    const auto number = [&] {
        const QVariant value = next();
        sound = sound && is_number(value);
        return number_from(value);
    };
    const auto whole = [&] {
        const QVariant value = next();
        sound = sound && is_number(value);
        return whole_from(value);
    };
    CoreEntry entry;
    entry.id = CoreId{next().toLongLong()};
    entry.core.id = text_from(next());
    entry.core.date_cored = text_from(next());
    entry.core.outer = outer_wood_from(text_from(next())).value_or(OuterWood::Unknown);
    entry.core.pith = field_pith_from(text_from(next()));
    entry.core.core_height_cm = number();
    entry.core.azimuth_deg = number();
    entry.core.borer_mm = number();
    entry.core.pieces = whole();
    entry.core.scan = text_from(next());
    entry.core.collector = text_from(next());
    entry.core.notes = text_from(next());
    if (const QVariant accepted = next(); !accepted.isNull()) {
        entry.accepted = ReadingId{accepted.toLongLong()};
    }
    entry.tree.id = text_from(next());
    entry.tree.species = text_from(next());
    entry.tree.wood = wood_type_from(text_from(next()));
    if (const auto living = whole()) {
        entry.tree.living = *living != 0;
    }
    entry.tree.dbh_cm = number();
    entry.tree.bark_mm = number();
    entry.tree.lean_azimuth_deg = number();
    entry.tree.lean_deg = number();
    entry.tree.slope_aspect_deg = number();
    entry.site.id = text_from(next());
    entry.site.latitude = number();
    entry.site.longitude = number();
    entry.site.elevation_m = number();
    return sound ? std::optional(std::move(entry)) : std::nullopt;
}

} // namespace

Outcome<void> write_sites(const Connection& connection, std::span<const Site> sites) {
    std::int64_t site_id = 0;
    std::int64_t tree_id = 0;
    std::int64_t core_id = 0;
    for (const Site& site : sites) {
        auto done = insert(connection, "site",
                           with_keys({{"id", to_sql(++site_id)}, {"name", to_sql(site.id)}}, columns_of(site)));
        for (const Tree& tree : site.trees) {
            if (done) {
                done =
                    insert(connection, "tree",
                           with_keys({{"id", to_sql(++tree_id)}, {"site", to_sql(site_id)}, {"name", to_sql(tree.id)}},
                                     columns_of(tree)));
            }
            for (const Core& core : tree.cores) {
                done = done ? write_core(connection, ++core_id, tree_id, core) : done;
            }
        }
        if (!done) {
            return done;
        }
    }
    return {};
}

Outcome<void> update_details(const Connection& connection, const CoreEntry& before, const CoreEntry& after) {
    const std::int64_t core = before.id.value;
    const auto tree = connection.value("SELECT tree FROM core WHERE id = ?", {to_sql(core)});
    const auto site =
        connection.value("SELECT site FROM tree WHERE id = (SELECT tree FROM core WHERE id = ?)", {to_sql(core)});
    if (!tree || !site) {
        return tl::unexpected(tree ? site.error() : tree.error());
    }
    auto done = update(connection, "core", core, columns_of(before.core), columns_of(after.core));
    if (done) {
        done = update_others(connection, core, before.core.others, after.core.others);
    }
    if (done) {
        done = update(connection, "tree", tree->toLongLong(), columns_of(before.tree), columns_of(after.tree));
    }
    return done ? update(connection, "site", site->toLongLong(), columns_of(before.site), columns_of(after.site))
                : done;
}

Outcome<std::vector<CoreEntry>> read_cores(const Connection& connection) {
    auto rows = connection.run(
        "SELECT core.id, core.name, date_cored, outer_wood, pith, core_height_cm, azimuth_deg, borer_mm, pieces, scan, "
        "collector, notes, accepted_reading, tree.name, species, wood, living, dbh_cm, bark_mm, lean_azimuth_deg, "
        "lean_deg, slope_aspect_deg, site.name, latitude, longitude, elevation_m FROM core JOIN tree ON core.tree = "
        "tree.id JOIN site ON tree.site = site.id ORDER BY core.id");
    if (!rows) {
        return tl::unexpected(std::move(rows.error()));
    }
    std::vector<CoreEntry> cores;
    std::map<CoreId, std::size_t> index;
    while (rows->next()) {
        auto entry = core_entry(*rows);
        if (!entry) {
            return fail(connection.file().string(), "the file is damaged: what it says of a core can't be read",
                        "use a copy from before");
        }
        cores.push_back(std::move(*entry));
        index[cores.back().id] = cores.size() - 1;
    }
    auto columns = connection.run("SELECT core, name, text FROM core_column");
    if (!columns) {
        return tl::unexpected(std::move(columns.error()));
    }
    while (columns->next()) {
        if (const auto found = index.find(CoreId{columns->value(0).toLongLong()}); found != index.end()) {
            cores[found->second].core.others[text_from(columns->value(1))] = text_from(columns->value(2));
        }
    }
    return cores;
}

} // namespace pithward::record
