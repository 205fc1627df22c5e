#pragma once

#include "app/review/queue_items.h"
#include "app/review/review_case.h"

#include <QString>

namespace pithward::bench {

/// "kept as it is", ...
[[nodiscard]] QString state_in_words(Finding::State state);
/// "HW01A · Possibly overlooked".
[[nodiscard]] QString title_of(const QueueItem& item);
/// What the list says below the title: how it was settled, what is at stake, what was commented.
[[nodiscard]] QString summary_of(const QueueItem& item);
/// Where the core is from and who worked on the reading.
[[nodiscard]] QString provenance_of(const ReviewCase& one);
/// What is to be known of a finding: reason, proposal, what the program turned down there, and how it was settled.
[[nodiscard]] QString story_of(const ReviewCase& one, const Finding& finding);

} // namespace pithward::bench
