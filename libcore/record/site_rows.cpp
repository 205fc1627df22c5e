#include "libcore/record/site_rows.h"

#include <map>

namespace pithward::record {

namespace {

Outcome<void> insert(const Connection& connection, const char* statement, const QVariantList& values) {
    return connection.run(statement, values).map([](const QSqlQuery&) {});
}

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

Outcome<void> write_core(const Connection& connection, std::int64_t id, std::int64_t tree, const Core& core) {
    auto done = insert(connection,
                       "INSERT INTO core (id, tree, name, date_cored, outer_wood, pith, core_height_cm, azimuth_deg, "
                       "borer_mm, pieces, scan, collector, notes) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                       {to_sql(id), to_sql(tree), to_sql(core.id), to_sql(core.date_cored), to_sql(word(core.outer)),
                        to_sql(field_pith_word(core.pith)), to_sql(core.core_height_cm), to_sql(core.azimuth_deg),
                        to_sql(core.borer_mm), to_sql(core.pieces), to_sql(core.scan), to_sql(core.collector),
                        to_sql(core.notes)});
    for (const auto& [name, text] : core.others) {
        if (done) {
            done = insert(connection, "INSERT INTO core_column (core, name, text) VALUES (?, ?, ?)",
                          {to_sql(id), to_sql(name), to_sql(text)});
        }
    }
    return done;
}

Outcome<void> write_tree(const Connection& connection, std::int64_t id, std::int64_t site, const Tree& tree) {
    const auto living = tree.living ? std::optional<int>(*tree.living ? 1 : 0) : std::nullopt;
    return insert(connection,
                  "INSERT INTO tree (id, site, name, species, wood, living, dbh_cm, bark_mm, lean_azimuth_deg, "
                  "lean_deg, slope_aspect_deg) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                  {to_sql(id), to_sql(site), to_sql(tree.id), to_sql(tree.species),
                   to_sql(tree.wood ? word(*tree.wood) : std::string()), to_sql(living), to_sql(tree.dbh_cm),
                   to_sql(tree.bark_mm), to_sql(tree.lean_azimuth_deg), to_sql(tree.lean_deg),
                   to_sql(tree.slope_aspect_deg)});
}

CoreEntry core_entry(const QSqlQuery& row) {
    int at = 0;
    const auto next = [&] { return row.value(at++); };
    CoreEntry entry;
    entry.id = CoreId{next().toLongLong()};
    entry.core.id = text_from(next());
    entry.core.date_cored = text_from(next());
    entry.core.outer = outer_wood_from(text_from(next())).value_or(OuterWood::Unknown);
    entry.core.pith = field_pith_from(text_from(next()));
    entry.core.core_height_cm = number_from(next());
    entry.core.azimuth_deg = number_from(next());
    entry.core.borer_mm = number_from(next());
    entry.core.pieces = whole_from(next());
    entry.core.scan = text_from(next());
    entry.core.collector = text_from(next());
    entry.core.notes = text_from(next());
    if (const QVariant accepted = next(); !accepted.isNull()) {
        entry.accepted = ReadingId{accepted.toLongLong()};
    }
    entry.tree.id = text_from(next());
    entry.tree.species = text_from(next());
    entry.tree.wood = wood_type_from(text_from(next()));
    if (const auto living = whole_from(next())) {
        entry.tree.living = *living != 0;
    }
    entry.tree.dbh_cm = number_from(next());
    entry.tree.bark_mm = number_from(next());
    entry.tree.lean_azimuth_deg = number_from(next());
    entry.tree.lean_deg = number_from(next());
    entry.tree.slope_aspect_deg = number_from(next());
    entry.site.id = text_from(next());
    entry.site.latitude = number_from(next());
    entry.site.longitude = number_from(next());
    entry.site.elevation_m = number_from(next());
    return entry;
}

} // namespace

Outcome<void> write_sites(const Connection& connection, std::span<const Site> sites) {
    std::int64_t site_id = 0;
    std::int64_t tree_id = 0;
    std::int64_t core_id = 0;
    for (const Site& site : sites) {
        auto done =
            insert(connection, "INSERT INTO site (id, name, latitude, longitude, elevation_m) VALUES (?, ?, ?, ?, ?)",
                   {to_sql(++site_id), to_sql(site.id), to_sql(site.latitude), to_sql(site.longitude),
                    to_sql(site.elevation_m)});
        for (const Tree& tree : site.trees) {
            done = done ? write_tree(connection, ++tree_id, site_id, tree) : done;
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
        cores.push_back(core_entry(*rows));
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
