#include "libcore/record/history_rows.h"

#include "libcore/edit/edit_json.h"
#include "libcore/formats/text_input.h"

namespace pithward::record {

namespace {

template <typename Tag>
QVariant id_to_sql(const std::optional<Id<Tag>>& id) {
    return id ? to_sql(id->value) : QVariant(QMetaType::fromType<qlonglong>());
}

template <typename IdType>
std::optional<IdType> id_from(const QVariant& value) {
    return value.isNull() ? std::nullopt : std::optional(IdType{value.toLongLong()});
}

/// What stands in the history stands in one line: a name with a line end in it could tell of what nobody did.
Outcome<void> check_line(const HistoryEntry& entry) {
    const auto blank = [](const std::string& text) { return formats::is_blank(text); };
    if (blank(entry.who) || formats::has_control(entry.who)) {
        return fail("", "the name of who does this is empty or has control characters in it",
                    "give a name, in one line");
    }
    if (formats::has_control(entry.label) || formats::has_control(entry.at)) {
        return fail("", "what the history is to tell has control characters in it", "write it in one line");
    }
    return {};
}

Outcome<void> insert_line(const Connection& connection, const HistoryEntry& entry) {
    if (auto sound = check_line(entry); !sound) {
        return sound;
    }
    // The next number is found in the transaction that uses it, so no two are the same.
    return connection.change(
        "INSERT INTO history (id, at, who, program, core, reading, revision, undoes, label, body) SELECT "
        "COALESCE(MAX(id), 0) + 1, ?, ?, ?, ?, ?, ?, ?, ?, ? FROM history",
        {to_sql(entry.at), to_sql(entry.who), to_sql(entry.program), id_to_sql(entry.core), id_to_sql(entry.reading),
         id_to_sql(entry.edit), id_to_sql(entry.undoes), to_sql(entry.label), to_sql(entry.body)});
}

} // namespace

Outcome<void> write_deed(const Connection& connection, const Deed& deed, const EditStamp& stamp) {
    return insert_line(connection, {.at = stamp.when,
                                    .who = stamp.who,
                                    .program = stamp.program_version,
                                    .core = deed.core,
                                    .reading = deed.reading,
                                    .label = deed.label,
                                    .body = deed.body});
}

Outcome<void> write_record(const Connection& connection, CoreId core, ReadingId reading, const EditRecord& record,
                           const std::string& label) {
    return edit_to_json(record.edit).and_then([&](const std::string& body) {
        return insert_line(connection, {.at = record.when,
                                        .who = record.who,
                                        .program = record.program_version,
                                        .core = core,
                                        .reading = reading,
                                        .edit = record.id,
                                        .undoes = record.undoes,
                                        .label = label,
                                        .body = body});
    });
}

Outcome<std::vector<HistoryEntry>> read_history(const Connection& connection, std::optional<CoreId> core) {
    static constexpr const char* all =
        "SELECT id, at, who, program, core, reading, revision, undoes, label, body FROM history ORDER BY id";
    static constexpr const char* of_core = "SELECT id, at, who, program, core, reading, revision, undoes, label, body "
                                           "FROM history WHERE core = ? ORDER BY id";
    auto rows = core ? connection.run(of_core, {to_sql(core->value)}) : connection.run(all);
    if (!rows) {
        return tl::unexpected(std::move(rows.error()));
    }
    std::vector<HistoryEntry> entries;
    while (rows->next()) {
        entries.push_back({.id = rows->value(0).toLongLong(),
                           .at = text_from(rows->value(1)),
                           .who = text_from(rows->value(2)),
                           .program = text_from(rows->value(3)),
                           .core = id_from<CoreId>(rows->value(4)),
                           .reading = id_from<ReadingId>(rows->value(5)),
                           .edit = id_from<EditId>(rows->value(6)),
                           .undoes = id_from<EditId>(rows->value(7)),
                           .label = text_from(rows->value(8)),
                           .body = text_from(rows->value(9))});
    }
    return entries;
}

Outcome<std::vector<EditRecord>> read_log(const Connection& connection, ReadingId reading) {
    auto rows = connection.run("SELECT revision, who, at, program, undoes, body FROM history WHERE reading = ? AND "
                               "revision IS NOT NULL ORDER BY revision",
                               {to_sql(reading.value)});
    if (!rows) {
        return tl::unexpected(std::move(rows.error()));
    }
    std::vector<EditRecord> log;
    while (rows->next()) {
        auto edit = edit_from_json(text_from(rows->value(5)));
        if (!edit) {
            Fault fault = std::move(edit.error());
            fault.where = connection.file().string();
            return tl::unexpected(std::move(fault));
        }
        log.push_back({EditId{rows->value(0).toLongLong()}, text_from(rows->value(1)), text_from(rows->value(2)),
                       text_from(rows->value(3)), id_from<EditId>(rows->value(4)), std::move(*edit)});
    }
    return log;
}

} // namespace pithward::record
