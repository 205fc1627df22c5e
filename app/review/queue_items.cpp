#include "app/review/queue_items.h"

#include <algorithm>

namespace pithward::bench {

namespace {

QueueItem item_of(const Reading& reading, const Finding& finding, double rings_at_stake) {
    return {reading.id,    finding.id,      reading.core,    finding.kind,
            finding.state, finding.verdict, finding.comment, rings_at_stake};
}

bool can_be_passed(const Reading& reading) {
    return reading.state == Reading::State::Marked && std::ranges::all_of(reading.findings, [](const Finding& one) {
               return one.state != Finding::State::Open && one.verdict == Verdict::Passed;
           });
}

} // namespace

bool same_item(const QueueItem& a, const QueueItem& b) {
    return a.reading == b.reading && a.finding == b.finding;
}

Outcome<std::vector<QueueItem>> read_queue(const record::Project& project, ReadingShelf& shelf, Waits whom) {
    static const std::vector<std::string> second{"marked", "returned"};
    static const std::vector<std::string> first{"proposed", "returned"};
    return shelf.readings(project, whom == Waits::SecondPerson ? second : first)
        .map([whom](const std::vector<Reading>& readings) {
            std::vector<QueueItem> items;
            const auto waiting =
                whom == Waits::SecondPerson ? review::supervisors_queue(readings) : review::analysts_list(readings);
            items.reserve(waiting.size() + readings.size());
            for (const review::Waiting& one : waiting) {
                const auto reading = std::ranges::find(readings, one.reading, &Reading::id);
                const auto finding = std::ranges::find(reading->findings, one.finding, &Finding::id);
                items.push_back(item_of(*reading, *finding, one.rings_at_stake));
            }
            for (const Reading& reading : readings) {
                if (whom == Waits::SecondPerson && can_be_passed(reading)) {
                    items.push_back({.reading = reading.id, .finding = {}, .core = reading.core, .comment = {}});
                }
            }
            return items;
        });
}

} // namespace pithward::bench
