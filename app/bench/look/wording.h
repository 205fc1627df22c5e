#pragma once

#include "libcore/measure/age.h"
#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"
#include "libcore/specimen/site.h"

#include <QString>

namespace pithward::bench {

/// What things are called on the bench, in words for people; every text can be translated.

[[nodiscard]] QString name_of(WoodType wood);
[[nodiscard]] QString name_of(OuterWood outer);
[[nodiscard]] QString name_of(FindingKind kind);
[[nodiscard]] QString name_of(Calibration::Source source);

/// "1200 dpi, from the file's tag"
[[nodiscard]] QString in_words(const Calibration& calibration);
/// "1200 dpi, by the ruler, ± 0.05 %"
[[nodiscard]] QString in_full(const Calibration& calibration);
/// "98 % sure, from the slope of the latewood"
[[nodiscard]] QString in_words(const BarkEnd& bark_end);
/// "1.234 mm"
[[nodiscard]] QString in_words(Millimetres length, int decimals = 3);

/// What a field sheet says. "HW01, Pinus sp., cored 2023-10-04"; in full with site, measures and notes.
[[nodiscard]] QString in_words(const Tree& tree, const Core& core);
[[nodiscard]] QString in_full(const Site& site, const Tree& tree, const Core& core);

/// The year, or "ring 12" when undated.
[[nodiscard]] QString name_of(const Ring& ring);
/// "1987 · 1.234 mm"
[[nodiscard]] QString ring_in_short(const Ring& ring);
/// "1987, ring 12 from the bark: 1.234 mm ± 0.008 mm"
[[nodiscard]] QString ring_in_full(const Ring& ring);

/// "5 rings to the pith (3 to 8)"; "pith on the core".
[[nodiscard]] QString pith_in_short(const Pith& pith);
/// The distance with its interval, and the rings with theirs.
[[nodiscard]] QString distance_in_words(const Pith& pith);
[[nodiscard]] QString rings_in_words(const Pith& pith);
[[nodiscard]] QString in_words(const OtherPith& other);
[[nodiscard]] QString name_of(Pith::Source source);
/// A year with its interval.
[[nodiscard]] QString in_words(const YearRange& range);

} // namespace pithward::bench
