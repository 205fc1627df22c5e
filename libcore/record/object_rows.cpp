// How the objects of a reading are written to their rows.
#include "libcore/record/object_rows.h"

#include "libcore/edit/edit_json.h"
#include "libcore/record/curve_bytes.h"

namespace pithward::record {

namespace {

/// The statements that write the rows of one kind of object. Each ends in the reading and the object's number.
struct Statements {
    const char* insert;
    const char* update;
    const char* remove;
};

constexpr Statements statements(const Boundary& /*kind*/) {
    return {"INSERT INTO boundary (leg, x, y, tangent, sd, confidence, flags, curve, latewood, sd_assumed, origin, "
            "confirmation, note, reading, id) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
            "UPDATE boundary SET leg = ?, x = ?, y = ?, tangent = ?, sd = ?, confidence = ?, flags = ?, curve = ?, "
            "latewood = ?, sd_assumed = ?, origin = ?, confirmation = ?, note = ? WHERE reading = ? AND id = ?",
            "DELETE FROM boundary WHERE reading = ? AND id = ?"};
}

constexpr Statements statements(const Candidate& /*kind*/) {
    return {"INSERT INTO candidate (leg, x, y, tangent, sd, confidence, flags, curve, latewood, reason, reading, id) "
            "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
            "UPDATE candidate SET leg = ?, x = ?, y = ?, tangent = ?, sd = ?, confidence = ?, flags = ?, curve = ?, "
            "latewood = ?, reason = ? WHERE reading = ? AND id = ?",
            "DELETE FROM candidate WHERE reading = ? AND id = ?"};
}

constexpr Statements statements(const Break& /*kind*/) {
    return {"INSERT INTO path_break (value, reading, id) VALUES (?, ?, ?)",
            "UPDATE path_break SET value = ? WHERE reading = ? AND id = ?",
            "DELETE FROM path_break WHERE reading = ? AND id = ?"};
}

constexpr Statements statements(const AbsentRing& /*kind*/) {
    return {"INSERT INTO absent_ring (value, reading, id) VALUES (?, ?, ?)",
            "UPDATE absent_ring SET value = ? WHERE reading = ? AND id = ?",
            "DELETE FROM absent_ring WHERE reading = ? AND id = ?"};
}

constexpr Statements statements(const Finding& /*kind*/) {
    return {"INSERT INTO finding (state, value, reading, id) VALUES (?, ?, ?, ?)",
            "UPDATE finding SET state = ?, value = ? WHERE reading = ? AND id = ?",
            "DELETE FROM finding WHERE reading = ? AND id = ?"};
}

std::string flag_words(const std::set<Flag>& flags) {
    std::string words;
    for (const Flag flag : flags) {
        words.append(words.empty() ? "" : " ").append(word(flag));
    }
    return words;
}

/// The columns that boundaries and candidates have in common.
template <typename T>
QVariantList mark_values(const T& mark) {
    const std::string curve = curve_bytes(mark.curve);
    const auto latewood = mark.latewood ? std::optional(mark.latewood->value()) : std::nullopt;
    return {to_sql(static_cast<std::int64_t>(mark.leg)),
            mark.at.x,
            mark.at.y,
            mark.tangent,
            mark.sd.value(),
            mark.confidence,
            to_sql(flag_words(mark.flags)),
            QByteArray(curve.data(), static_cast<qsizetype>(curve.size())),
            to_sql(latewood)};
}

Outcome<QVariantList> values_of(const Boundary& boundary) {
    QVariantList values = mark_values(boundary);
    values << boundary.sd_assumed << to_sql(word(boundary.origin)) << to_sql(word(boundary.confirmation))
           << to_sql(boundary.note);
    return values;
}

Outcome<QVariantList> values_of(const Candidate& candidate) {
    QVariantList values = mark_values(candidate);
    values << to_sql(candidate.reason);
    return values;
}

Outcome<QVariantList> values_of(const Finding& finding) {
    return value_to_json(finding).map([&](const std::string& text) {
        return QVariantList{to_sql(word(finding.state)), to_sql(text)};
    });
}

template <typename T>
Outcome<QVariantList> values_of(const T& object) {
    return value_to_json(object).map([](const std::string& text) { return QVariantList{to_sql(text)}; });
}

template <typename T>
Outcome<void> write(const Connection& connection, const char* statement, ReadingId reading, const T& object) {
    return values_of(object).and_then([&](QVariantList values) {
        values << to_sql(reading.value) << to_sql(object.id.value);
        return connection.change(statement, values);
    });
}

} // namespace

template <typename T>
Outcome<void> insert_object(const Connection& connection, ReadingId reading, const T& object) {
    return write(connection, statements(object).insert, reading, object);
}

template <typename T>
Outcome<void> update_object(const Connection& connection, ReadingId reading, const T& object) {
    return write(connection, statements(object).update, reading, object);
}

template <typename T>
Outcome<void> delete_object(const Connection& connection, ReadingId reading, const T& object) {
    return connection.change(statements(object).remove, {to_sql(reading.value), to_sql(object.id.value)});
}

template Outcome<void> insert_object(const Connection&, ReadingId, const Boundary&);
template Outcome<void> update_object(const Connection&, ReadingId, const Boundary&);
template Outcome<void> delete_object(const Connection&, ReadingId, const Boundary&);
template Outcome<void> insert_object(const Connection&, ReadingId, const Candidate&);
template Outcome<void> update_object(const Connection&, ReadingId, const Candidate&);
template Outcome<void> delete_object(const Connection&, ReadingId, const Candidate&);
template Outcome<void> insert_object(const Connection&, ReadingId, const Break&);
template Outcome<void> update_object(const Connection&, ReadingId, const Break&);
template Outcome<void> delete_object(const Connection&, ReadingId, const Break&);
template Outcome<void> insert_object(const Connection&, ReadingId, const AbsentRing&);
template Outcome<void> update_object(const Connection&, ReadingId, const AbsentRing&);
template Outcome<void> delete_object(const Connection&, ReadingId, const AbsentRing&);
template Outcome<void> insert_object(const Connection&, ReadingId, const Finding&);
template Outcome<void> update_object(const Connection&, ReadingId, const Finding&);
template Outcome<void> delete_object(const Connection&, ReadingId, const Finding&);

} // namespace pithward::record
