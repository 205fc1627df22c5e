#pragma once

#include "libcore/edit/edit_log.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"

#include <cstdint>
#include <string>
#include <vector>

namespace pithward {

/// Who makes an edit, when, and with which version of the program.
struct EditStamp {
    std::string who;
    std::string when; ///< ISO 8601 in UTC.
    std::string program_version;
    friend bool operator==(const EditStamp&, const EditStamp&) = default;
};

/// One reading that is being worked on, with the log of its edits: the one door to a change. A value: copy it to hand
/// it to work beside the window, and hold results by `revision`.
class Document {
public:
    Document() = default;
    /// A reading as it is now and the edits that led to it, oldest first. Fails on a reading that is not sound.
    [[nodiscard]] static Outcome<Document> open(Reading reading, std::vector<EditRecord> log = {});

    [[nodiscard]] const Reading& reading() const { return reading_; }
    [[nodiscard]] const std::vector<EditRecord>& log() const { return log_; }
    /// Grows with every record, so a result that was made from an older one can be told.
    [[nodiscard]] std::int64_t revision() const { return log_.empty() ? 0 : log_.back().id.value; }
    /// A number that no object of this document has ever had, for edits that add one; the ones above it are free too.
    [[nodiscard]] std::int64_t fresh_id() const { return highest_id_ + 1; }

    /// Makes an edit. An edit of a reading that was passed sets it back to marked. False where the edit changes
    /// nothing: then it is dropped. Refused as `apply` says, and then all is as before.
    Outcome<bool> make(const Edit& edit, const EditStamp& stamp);
    /// Takes back this person's latest edit. False where there is none.
    Outcome<bool> undo(const EditStamp& stamp);
    /// Brings back what this person undid last. False where there is nothing.
    Outcome<bool> redo(const EditStamp& stamp);
    /// Takes back one record of the log, whoever made it.
    Outcome<bool> take_back(EditId record, const EditStamp& stamp);

private:
    Outcome<bool> append(const Edit& wanted, std::optional<EditId> undoes, const EditStamp& stamp);

    Reading reading_;
    std::vector<EditRecord> log_;
    std::int64_t highest_id_ = 0;
};

/// The reading as it was when the record `upto` was the last one; with an id before the first, as it was at the start.
[[nodiscard]] Outcome<Reading> reading_at(const Document& document, EditId upto);

} // namespace pithward
