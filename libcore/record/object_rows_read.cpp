// How the objects of a reading are read from their rows.
#include "libcore/edit/edit_json.h"
#include "libcore/record/curve_bytes.h"
#include "libcore/record/object_rows.h"

#include <algorithm>
#include <string_view>

namespace pithward::record {

namespace {

constexpr int mark_columns = 10;

tl::unexpected<Fault> damaged(const Connection& connection, const char* what) {
    return fail(connection.file().string(), std::string("the file is damaged: ") + what, "use a copy from before");
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

/// False where a value can't be one of a mark. What is no finite number is found later, for all that is in a reading.
template <typename T>
bool read_mark(const QSqlQuery& row, T& mark) {
    constexpr int latewood_column = 9;
    for (const int column : {0, 1, 2, 3, 4, 5, 6, latewood_column}) {
        const QVariant value = row.value(column);
        if (!is_number(value) || (value.isNull() && column != latewood_column)) {
            return false;
        }
    }
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
    if (const auto latewood = number_from(row.value(latewood_column))) {
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

} // namespace

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
