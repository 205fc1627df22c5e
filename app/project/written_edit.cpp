#include "app/project/written_edit.h"

#include <algorithm>

namespace pithward::bench {

Outcome<std::optional<EditRecord>> written_edit(record::Project& project, ReadingId reading, const EditRecord& record,
                                                const std::optional<EditRecord>& named) {
    const EditStamp stamp{record.who, record.when, record.program_version};
    if (!record.undoes) {
        return project.edit(reading, record.edit, stamp);
    }
    const auto document = project.document(reading);
    if (!document) {
        return tl::unexpected(document.error());
    }
    const auto there = std::ranges::find(document->log(), *record.undoes, &EditRecord::id);
    if (!named || there == document->log().end() || there->who != named->who || there->when != named->when) {
        return fail("", "somebody else has worked on this reading meanwhile", "look at it, and do it again");
    }
    return project.take_back(reading, *record.undoes, stamp);
}

} // namespace pithward::bench
