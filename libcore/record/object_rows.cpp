#include "libcore/record/object_rows.h"

#include "libcore/edit/edit_json.h"
#include "libcore/record/curve_bytes.h"

#include <algorithm>
#include <string_view>

namespace pithward::record {

namespace {

constexpr int mark_columns = 10;

Outcome<void> without_rows(Outcome<QSqlQuery> query) {
    return std::move(query).map([](const QSqlQuery&) {});
}

Outcome<void> delete_from(const Connection& connection, const char* statement, ReadingId reading, std::int64_t id) {
    return without_rows(connection.run(statement, {to_sql(reading.value), to_sql(id)}));
}

tl::unexpected<Fault> damaged(const Connection& connection, const char* what) {
    return fail(connection.file().string(), std::string("the file is damaged: ") + what, "use a copy from before");
}

std::string flag_words(const std::set<Flag>& flags) {
    std::string words;
    for (const Flag flag : flags) {
        words.append(words.empty() ? "" : " ").append(word(flag));
    }
    return words;
}

std::optional<std::set<Flag>> flags_from(std::string_view words) {
    std::set<Flag> flags;
    while (!words.empty()) {
        const std::string_view one = words.substr(0, words.find(' '));
        const auto flag = flag_from(one);
        if (!flag) {
            return std::nullopt;
        }
        flags.insert(*flag);
        words.remove_prefix(std::min(words.size(), one.size() + 1));
    }
    return flags;
}

/// The columns that boundaries and candidates have in common.
template <typename T>
QVariantList mark_values(ReadingId reading, const T& mark) {
    const std::string curve = curve_bytes(mark.curve);
    const auto latewood = mark.latewood ? std::optional(mark.latewood->value()) : std::nullopt;
    return {to_sql(reading.value),
            to_sql(mark.id.value),
            to_sql(static_cast<std::int64_t>(mark.leg)),
            mark.at.x,
            mark.at.y,
            mark.tangent,
            mark.sd.value(),
            mark.confidence,
            to_sql(flag_words(mark.flags)),
            QByteArray(curve.data(), static_cast<qsizetype>(curve.size())),
            to_sql(latewood)};
}

/// False where a value can't be one of a mark. What is no finite number is found later, for all that is in a reading.
template <typename T>
bool read_mark(const QSqlQuery& row, T& mark) {
    mark.id.value = row.value(0).toLongLong();
    const qlonglong leg = row.value(1).toLongLong();
    mark.leg = static_cast<std::size_t>(leg);
    mark.at = {row.value(2).toDouble(), row.value(3).toDouble()};
    mark.tangent = row.value(4).toDouble();
    mark.sd = Millimetres(row.value(5).toDouble());
    mark.confidence = row.value(6).toDouble();
    auto flags = flags_from(text_from(row.value(7)));
    const QByteArray bytes = row.value(8).toByteArray();
    auto curve = curve_from({bytes.data(), static_cast<std::size_t>(bytes.size())});
    if (!flags || !curve || leg < 0) {
        return false;
    }
    mark.flags = std::move(*flags);
    mark.curve = std::move(*curve);
    if (const auto latewood = number_from(row.value(9))) {
        mark.latewood = Millimetres(*latewood);
    }
    return true;
}

template <typename T>
Outcome<std::vector<T>> read_values(const Connection& connection, const char* statement, ReadingId reading) {
    auto rows = connection.run(statement, {to_sql(reading.value)});
    if (!rows) {
        return tl::unexpected(std::move(rows.error()));
    }
    std::vector<T> all;
    while (rows->next()) {
        auto value = value_from_json<T>(text_from(rows->value(0)));
        if (!value) {
            return tl::unexpected(std::move(value.error()));
        }
        all.push_back(std::move(*value));
    }
    return all;
}

template <typename T>
Outcome<void> insert_value(const Connection& connection, const char* statement, ReadingId reading, const T& value) {
    return value_to_json(value).and_then([&](const std::string& text) {
        return without_rows(connection.run(statement, {to_sql(reading.value), to_sql(value.id.value), to_sql(text)}));
    });
}

} // namespace

Outcome<void> insert_object(const Connection& connection, ReadingId reading, const Boundary& boundary) {
    QVariantList values = mark_values(reading, boundary);
    values << boundary.sd_assumed << to_sql(word(boundary.origin)) << to_sql(word(boundary.confirmation))
           << to_sql(boundary.note);
    return without_rows(connection.run("INSERT INTO boundary (reading, id, leg, x, y, tangent, sd, confidence, flags, "
                                       "curve, latewood, sd_assumed, origin, confirmation, note) VALUES (?, ?, ?, ?, "
                                       "?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                                       values));
}

Outcome<void> insert_object(const Connection& connection, ReadingId reading, const Candidate& candidate) {
    QVariantList values = mark_values(reading, candidate);
    values << to_sql(candidate.reason);
    return without_rows(connection.run("INSERT INTO candidate (reading, id, leg, x, y, tangent, sd, confidence, flags, "
                                       "curve, latewood, reason) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                                       values));
}

Outcome<void> insert_object(const Connection& connection, ReadingId reading, const Break& stretch) {
    return insert_value(connection, "INSERT INTO path_break (reading, id, value) VALUES (?, ?, ?)", reading, stretch);
}

Outcome<void> insert_object(const Connection& connection, ReadingId reading, const AbsentRing& ring) {
    return insert_value(connection, "INSERT INTO absent_ring (reading, id, value) VALUES (?, ?, ?)", reading, ring);
}

Outcome<void> insert_object(const Connection& connection, ReadingId reading, const Finding& finding) {
    return value_to_json(finding).and_then([&](const std::string& text) {
        return without_rows(connection.run(
            "INSERT INTO finding (reading, id, state, value) VALUES (?, ?, ?, ?)",
            {to_sql(reading.value), to_sql(finding.id.value), to_sql(word(finding.state)), to_sql(text)}));
    });
}

Outcome<void> delete_object(const Connection& connection, ReadingId reading, const Boundary& boundary) {
    return delete_from(connection, "DELETE FROM boundary WHERE reading = ? AND id = ?", reading, boundary.id.value);
}

Outcome<void> delete_object(const Connection& connection, ReadingId reading, const Candidate& candidate) {
    return delete_from(connection, "DELETE FROM candidate WHERE reading = ? AND id = ?", reading, candidate.id.value);
}

Outcome<void> delete_object(const Connection& connection, ReadingId reading, const Break& stretch) {
    return delete_from(connection, "DELETE FROM path_break WHERE reading = ? AND id = ?", reading, stretch.id.value);
}

Outcome<void> delete_object(const Connection& connection, ReadingId reading, const AbsentRing& ring) {
    return delete_from(connection, "DELETE FROM absent_ring WHERE reading = ? AND id = ?", reading, ring.id.value);
}

Outcome<void> delete_object(const Connection& connection, ReadingId reading, const Finding& finding) {
    return delete_from(connection, "DELETE FROM finding WHERE reading = ? AND id = ?", reading, finding.id.value);
}

Outcome<std::vector<Boundary>> read_boundaries(const Connection& connection, ReadingId reading) {
    auto rows = connection.run("SELECT id, leg, x, y, tangent, sd, confidence, flags, curve, latewood, sd_assumed, "
                               "origin, confirmation, note FROM boundary WHERE reading = ? ORDER BY id",
                               {to_sql(reading.value)});
    if (!rows) {
        return tl::unexpected(std::move(rows.error()));
    }
    std::vector<Boundary> all;
    while (rows->next()) {
        Boundary boundary;
        if (!read_mark(*rows, boundary)) {
            return damaged(connection, "a ring boundary can't be read");
        }
        boundary.sd_assumed = rows->value(mark_columns).toInt() != 0;
        const std::string origin = text_from(rows->value(mark_columns + 1));
        boundary.origin = origin == word(Origin::Analyst) ? Origin::Analyst : Origin::Program;
        const std::string confirmed = text_from(rows->value(mark_columns + 2));
        for (const Confirmation known : {Confirmation::None, Confirmation::LookedAt, Confirmation::InBulk}) {
            boundary.confirmation = word(known) == confirmed ? known : boundary.confirmation;
        }
        boundary.note = text_from(rows->value(mark_columns + 3));
        all.push_back(std::move(boundary));
    }
    return all;
}

Outcome<std::vector<Candidate>> read_candidates(const Connection& connection, ReadingId reading) {
    auto rows = connection.run("SELECT id, leg, x, y, tangent, sd, confidence, flags, curve, latewood, reason FROM "
                               "candidate WHERE reading = ? ORDER BY id",
                               {to_sql(reading.value)});
    if (!rows) {
        return tl::unexpected(std::move(rows.error()));
    }
    std::vector<Candidate> all;
    while (rows->next()) {
        Candidate candidate;
        if (!read_mark(*rows, candidate)) {
            return damaged(connection, "a candidate can't be read");
        }
        candidate.reason = text_from(rows->value(mark_columns));
        all.push_back(std::move(candidate));
    }
    return all;
}

Outcome<std::vector<Break>> read_breaks(const Connection& connection, ReadingId reading) {
    return read_values<Break>(connection, "SELECT value FROM path_break WHERE reading = ? ORDER BY id", reading);
}

Outcome<std::vector<AbsentRing>> read_absent_rings(const Connection& connection, ReadingId reading) {
    return read_values<AbsentRing>(connection, "SELECT value FROM absent_ring WHERE reading = ? ORDER BY id", reading);
}

Outcome<std::vector<Finding>> read_findings(const Connection& connection, ReadingId reading) {
    return read_values<Finding>(connection, "SELECT value FROM finding WHERE reading = ? ORDER BY id", reading);
}

} // namespace pithward::record
