#include "libcore/edit/reading_head.h"

#include <utility>
#include <variant>

namespace pithward {

namespace {

/// Puts what a change of a head changes onto another head, step by step through groups.
Edit onto(ReadingHead& head, const Edit& edit) {
    if (const auto* group = std::get_if<EditGroup>(&edit.body)) {
        EditGroup parts{group->label, {}};
        parts.edits.reserve(group->edits.size());
        for (const Edit& part : group->edits) {
            parts.edits.push_back(onto(head, part));
        }
        return {std::move(parts)};
    }
    const auto* changed = std::get_if<Changed<ReadingHead>>(&edit.body);
    if (changed == nullptr) {
        return edit;
    }
    const ReadingHead before = head;
    for_each_head_field([&](const char* /*name*/, auto field) {
        if (!(changed->before.*field == changed->after.*field)) {
            head.*field = changed->after.*field;
        }
    });
    return {Changed<ReadingHead>{before, head}};
}

} // namespace

Edit on_present_head(const Reading& reading, const Edit& edit) {
    ReadingHead head = head_of(reading);
    return onto(head, edit);
}

ReadingHead head_of(const Reading& reading) {
    return {.analyst = reading.analyst,
            .state = reading.state,
            .wood = reading.wood,
            .outer = reading.outer,
            .last_year = reading.last_year,
            .bark_end = reading.bark_end,
            .wood_edge = reading.wood_edge,
            .pith = reading.pith,
            .note = reading.note};
}

void set_head(Reading& reading, const ReadingHead& head) {
    reading.analyst = head.analyst;
    reading.state = head.state;
    reading.wood = head.wood;
    reading.outer = head.outer;
    reading.last_year = head.last_year;
    reading.bark_end = head.bark_end;
    reading.wood_edge = head.wood_edge;
    reading.pith = head.pith;
    reading.note = head.note;
}

} // namespace pithward
