#include "libcore/record/project_store.h"

#include "libcore/record/history_rows.h"
#include "libcore/record/reading_rows.h"
#include "libcore/record/transaction.h"

namespace pithward::record {

Outcome<void> Project::Store::change(const std::function<Outcome<void>()>& parts) {
    auto transaction = Transaction::begin(*connection_);
    if (!transaction) {
        return tl::unexpected(std::move(transaction.error()));
    }
    auto done = parts();
    return done ? transaction->commit() : done;
}

Outcome<Document> Project::Store::load(ReadingId id) const {
    auto reading = read_reading(*connection_, id);
    auto log = reading ? read_log(*connection_, id) : tl::unexpected(reading.error());
    if (!log) {
        return tl::unexpected(std::move(log.error()));
    }
    return Document::open(std::move(*reading), std::move(*log));
}

Outcome<std::optional<EditRecord>> Project::Store::make(ReadingId id, const Making& making) {
    std::optional<EditRecord> made;
    auto done = change([&] {
        return refresh(id).and_then([&] { return making(*document_); }).and_then([&](bool changed) -> Outcome<void> {
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

Outcome<void> Project::Store::refresh(ReadingId id) {
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

Outcome<void> Project::Store::write(ReadingId id, const EditRecord& record) {
    const auto core = connection_->value("SELECT core FROM reading WHERE id = ?", {to_sql(id.value)});
    auto done = core ? write_edit(*connection_, id, record.edit) : tl::unexpected(core.error());
    if (done) {
        done = connection_->change("UPDATE reading SET revision = ? WHERE id = ?",
                                   {to_sql(record.id.value), to_sql(id.value)});
    }
    return done ? write_record(*connection_, CoreId{core->toLongLong()}, id, record, label_of(document_->log(), record))
                : done;
}

} // namespace pithward::record
