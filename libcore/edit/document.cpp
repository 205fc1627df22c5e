#include "libcore/edit/document.h"

#include "libcore/edit/apply.h"
#include "libcore/edit/reading_head.h"
#include "libcore/edit/touched.h"

#include <algorithm>

namespace pithward {

namespace {

/// A passed reading that is edited is no longer what was passed. Undoing the edit gives the passed one back.
Edit also_unpassing(const Reading& reading, const Edit& edit) {
    const auto* head = std::get_if<Changed<ReadingHead>>(&edit.body);
    const bool state_set = head != nullptr && head->after.state != head->before.state;
    if (reading.state != Reading::State::Passed || state_set) {
        return edit;
    }
    // The head as it will be after the edit, which may change it too.
    const auto after = apply(reading, edit);
    if (!after || after->state != Reading::State::Passed) {
        return edit;
    }
    ReadingHead marked = head_of(*after);
    marked.state = Reading::State::Marked;
    return {EditGroup{label_of(edit), {edit, {Changed<ReadingHead>{head_of(*after), std::move(marked)}}}}};
}

} // namespace

Outcome<Document> Document::open(Reading reading, std::vector<EditRecord> log) {
    const auto unordered =
        std::ranges::adjacent_find(log, [](const EditRecord& a, const EditRecord& b) { return a.id >= b.id; });
    if (unordered != log.end()) {
        return fail("", "the edits of this reading are out of order", "use a copy of the project from before");
    }
    auto sound = readied(std::move(reading));
    if (!sound) {
        return tl::unexpected(std::move(sound.error()));
    }
    Document document;
    document.highest_id_ = highest_id(*sound);
    for (const EditRecord& record : log) {
        document.highest_id_ = std::max(document.highest_id_, highest_id(record.edit));
    }
    document.reading_ = std::move(*sound);
    document.log_ = std::move(log);
    return document;
}

Outcome<bool> Document::make(const Edit& edit, const EditStamp& stamp) {
    return append(edit, std::nullopt, stamp);
}

Outcome<bool> Document::undo(const EditStamp& stamp) {
    const auto latest = next_to_undo(log_, stamp.who);
    return latest ? take_back(*latest, stamp) : false;
}

Outcome<bool> Document::redo(const EditStamp& stamp) {
    const auto undone = next_to_redo(log_, stamp.who);
    return undone ? take_back(*undone, stamp) : false;
}

Outcome<bool> Document::take_back(EditId record, const EditStamp& stamp) {
    auto back = taking_back(log_, record);
    if (!back) {
        return tl::unexpected(std::move(back.error()));
    }
    return append(on_present_head(reading_, *back), record, stamp);
}

Outcome<bool> Document::append(const Edit& wanted, std::optional<EditId> undoes, const EditStamp& stamp) {
    if (changes_nothing(wanted)) {
        return false;
    }
    Edit edit = also_unpassing(reading_, wanted);
    auto after = apply(reading_, edit);
    if (!after) {
        return tl::unexpected(std::move(after.error()));
    }
    reading_ = std::move(*after);
    highest_id_ = std::max(highest_id_, highest_id(edit));
    log_.push_back({EditId{revision() + 1}, stamp.who, stamp.when, stamp.program_version, undoes, std::move(edit)});
    return true;
}

Outcome<Reading> reading_at(const Document& document, EditId upto) {
    Reading reading = document.reading();
    for (auto record = document.log().rbegin(); record != document.log().rend() && record->id > upto; ++record) {
        auto before = apply(std::move(reading), inverse(record->edit));
        if (!before) {
            return tl::unexpected(std::move(before.error()));
        }
        reading = std::move(*before);
    }
    return reading;
}

} // namespace pithward
