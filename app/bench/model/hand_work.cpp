#include "app/bench/model/hand_work.h"

#include "app/bench/model/edit_stamp.h"
#include "app/picture/polyline.h"
#include "app/picture/ring_places.h"
#include "libcore/edit/edit_log.h"

#include <algorithm>

namespace pithward::bench {

namespace {

bool drawn_by_hand(const Document& document) {
    return document.reading().bark_end.how == "given";
}

bool edited_by_hand(const Document& document) {
    return std::ranges::any_of(edits_in_effect(document.log()),
                               [](const EditRecord* record) { return record->who != programs_name; });
}

} // namespace

bool touched_by_hand(const Document& document) {
    return drawn_by_hand(document) || edited_by_hand(document);
}

bool drawn_and_unchanged(const Document& document) {
    return drawn_by_hand(document) && !edited_by_hand(document);
}

void keep_hand_work(BenchScan& scan) {
    for (std::size_t i = scan.documents.size(); i-- > 0;) {
        if (!touched_by_hand(scan.documents[i])) {
            scan.documents.erase(scan.documents.begin() + static_cast<std::ptrdiff_t>(i));
            scan.cores.erase(scan.cores.begin() + static_cast<std::ptrdiff_t>(i));
        }
    }
}

bool same_core(const picture::MeasuredCore& core, const Reading& reading) {
    if (reading.path.legs.empty()) {
        return false;
    }
    const Leg& leg = reading.path.legs.front();
    const ImagePoint middle = (leg.points.front() + leg.points.back()) * 0.5;
    const auto apart = picture::distance_to_path(core.reading, leg.scan, middle);
    return apart && *apart <= core.half_breadth_px;
}

std::size_t hand_edits(const BenchScan& scan) {
    std::size_t edits = 0;
    for (const Document& document : scan.documents) {
        edits += drawn_by_hand(document) ? 1U : 0U;
        edits += static_cast<std::size_t>(std::ranges::count_if(
            document.log(), [](const EditRecord& record) { return record.who != programs_name; }));
    }
    return edits;
}

} // namespace pithward::bench
