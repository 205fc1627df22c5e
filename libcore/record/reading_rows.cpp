#include "libcore/record/reading_rows.h"

#include "libcore/edit/edit_json.h"
#include "libcore/edit/reading_head.h"
#include "libcore/record/object_rows.h"

namespace pithward::record {

namespace {

Outcome<void> write_scale(const Connection& connection, ReadingId reading, const std::string& scan,
                          const Calibration& scale) {
    return connection.change("INSERT INTO calibration (reading, scan, px_per_mm_x, px_per_mm_y, relative_sd, source) "
                             "VALUES (?, ?, ?, ?, ?, ?)",
                             {to_sql(reading.value), to_sql(scan), scale.px_per_mm_x, scale.px_per_mm_y,
                              scale.relative_sd, to_sql(word(scale.source))});
}

/// Writes the parts of an edit, one after the other.
class EditWriter {
public:
    EditWriter(const Connection& connection, ReadingId reading)
        : connection_(connection)
        , reading_(reading) {}

    Outcome<void> operator()(const EditGroup& group) {
        for (const Edit& edit : group.edits) {
            if (auto written = std::visit(*this, edit.body); !written) {
                return written;
            }
        }
        return {};
    }

    Outcome<void> operator()(const Changed<ReadingHead>& changed) {
        return value_to_json(changed.after).and_then([&](const std::string& entries) {
            return connection_.change("UPDATE reading SET analyst = ?, state = ?, entries = ? WHERE id = ?",
                                      {to_sql(changed.after.analyst), to_sql(word(changed.after.state)),
                                       to_sql(entries), to_sql(reading_.value)});
        });
    }

    Outcome<void> operator()(const Changed<Path>& changed) {
        return value_to_json(changed.after).and_then([&](const std::string& path) {
            return connection_.change("UPDATE reading SET path = ? WHERE id = ?",
                                      {to_sql(path), to_sql(reading_.value)});
        });
    }

    Outcome<void> operator()(const CalibrationChanged& changed) {
        auto gone = connection_.change("DELETE FROM calibration WHERE reading = ? AND scan = ?",
                                       {to_sql(reading_.value), to_sql(changed.scan)});
        return gone && changed.after ? write_scale(connection_, reading_, changed.scan, *changed.after) : gone;
    }

    template <typename T>
    Outcome<void> operator()(const Added<T>& added) {
        return insert_object(connection_, reading_, added.value);
    }

    template <typename T>
    Outcome<void> operator()(const Removed<T>& removed) {
        return delete_object(connection_, reading_, removed.value);
    }

    template <typename T>
    Outcome<void> operator()(const Changed<T>& changed) {
        return update_object(connection_, reading_, changed.after);
    }

private:
    const Connection& connection_;
    ReadingId reading_;
};

Outcome<std::map<std::string, Calibration>> read_scales(const Connection& connection, ReadingId reading) {
    auto rows =
        connection.run("SELECT scan, px_per_mm_x, px_per_mm_y, relative_sd, source FROM calibration WHERE reading = ?",
                       {to_sql(reading.value)});
    if (!rows) {
        return tl::unexpected(std::move(rows.error()));
    }
    using Source = Calibration::Source;
    std::map<std::string, Calibration> scales;
    while (rows->next()) {
        if (!is_number(rows->value(1)) || !is_number(rows->value(2)) || !is_number(rows->value(3))) {
            return fail(connection.file().string(), "the file is damaged: a scale can't be read",
                        "use a copy from before");
        }
        Calibration scale{rows->value(1).toDouble(), rows->value(2).toDouble(), rows->value(3).toDouble(),
                          Source::Given};
        const std::string source = text_from(rows->value(4));
        for (const Source known : {Source::FileTag, Source::Given, Source::Ruler}) {
            scale.source = word(known) == source ? known : scale.source;
        }
        scales[text_from(rows->value(0))] = scale;
    }
    return scales;
}

template <typename T>
Outcome<void> take(Outcome<T> read, T& into) {
    return std::move(read).map([&](T value) { into = std::move(value); });
}

} // namespace

Outcome<void> write_reading(const Connection& connection, const Reading& reading, std::int64_t core) {
    const auto path = value_to_json(reading.path);
    const auto entries = value_to_json(head_of(reading));
    if (!path || !entries) {
        return tl::unexpected(path ? entries.error() : path.error());
    }
    auto written = connection.change(
        "INSERT INTO reading (id, core, revision, analyst, state, path, entries) VALUES (?, ?, 0, ?, ?, ?, ?)",
        {to_sql(reading.id.value), to_sql(core), to_sql(reading.analyst), to_sql(word(reading.state)), to_sql(*path),
         to_sql(*entries)});
    for (const auto& [scan, scale] : reading.calibrations) {
        written = written ? write_scale(connection, reading.id, scan, scale) : written;
    }
    const auto write_all = [&](const auto& list) {
        for (const auto& object : list) {
            written = written ? insert_object(connection, reading.id, object) : written;
        }
    };
    write_all(reading.boundaries);
    write_all(reading.not_annual);
    write_all(reading.breaks);
    write_all(reading.absent_rings);
    write_all(reading.findings);
    return written;
}

Outcome<void> write_edit(const Connection& connection, ReadingId reading, const Edit& edit) {
    return std::visit(EditWriter(connection, reading), edit.body);
}

Outcome<Reading> read_reading(const Connection& connection, ReadingId id) {
    auto row =
        connection.run("SELECT reading.path, entries, core.name FROM reading JOIN core ON reading.core = core.id "
                       "WHERE reading.id = ?",
                       {to_sql(id.value)});
    if (!row) {
        return tl::unexpected(std::move(row.error()));
    }
    if (!row->next()) {
        return fail(connection.file().string(), "this reading is not there", "choose another one");
    }
    const auto path = value_from_json<Path>(text_from(row->value(0)));
    const auto head = value_from_json<ReadingHead>(text_from(row->value(1)));
    if (!path || !head) {
        return tl::unexpected(path ? head.error() : path.error());
    }
    Reading reading;
    reading.id = id;
    reading.core = text_from(row->value(2));
    reading.path = *path;
    set_head(reading, *head);
    auto read = take(read_scales(connection, id), reading.calibrations);
    read = read ? take(read_boundaries(connection, id), reading.boundaries) : read;
    read = read ? take(read_candidates(connection, id), reading.not_annual) : read;
    read = read ? take(read_breaks(connection, id), reading.breaks) : read;
    read = read ? take(read_absent_rings(connection, id), reading.absent_rings) : read;
    read = read ? take(read_findings(connection, id), reading.findings) : read;
    if (!read) {
        return tl::unexpected(std::move(read.error()));
    }
    return reading;
}

} // namespace pithward::record
