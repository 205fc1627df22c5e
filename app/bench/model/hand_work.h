#pragma once

#include "app/bench/model/bench_model.h"

namespace pithward::bench {

/// Whether a reading holds what a person did and the program can't do again: a path that was given, or an edit in
/// effect that is not the program's own.
[[nodiscard]] bool touched_by_hand(const Document& document);

/// Whether a reading's path was drawn by a person and no edit by hand is in effect on it.
[[nodiscard]] bool drawn_and_unchanged(const Document& document);

/// Leaves on a scan only the cores that are touched by hand.
void keep_hand_work(BenchScan& scan);

/// Whether the middle of a reading's first leg lies on this core: then the two are one core.
[[nodiscard]] bool same_core(const picture::MeasuredCore& core, const Reading& reading);

/// How much a scan's readings have had by hand, paths and edits, with those that were taken back.
[[nodiscard]] std::size_t hand_edits(const BenchScan& scan);

} // namespace pithward::bench
