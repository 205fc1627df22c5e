#pragma once

#include "app/site/site_dating.h"

#include <QString>

namespace pithward::bench {

/// A correlation, with a minus that is as broad as a plus.
[[nodiscard]] QString two_decimals(double value);
/// "HW01A · 1915 to 2023 · r 0.41"
[[nodiscard]] QString title_of(const SiteDating& dating, const SiteLine& line);
/// What dating says of a series, a line each.
[[nodiscard]] QString verdict_of(const SiteDating& dating, const SiteLine& line);
/// "Ring 1978 is missing"
[[nodiscard]] QString title_of(const dating::Slip& slip);
/// How sure it is, and which years come into question.
[[nodiscard]] QString certainty_of(const dating::Slip& slip);
/// "1978 · 66 % · the tree may have laid no ring here"
[[nodiscard]] QString line_of(const dating::SlipPlace& place);
/// What accepting does, for a button.
[[nodiscard]] QString words_of_change(const dating::SlipPlace& place);
/// What accepting does where all of a series fits so many years later, for a button.
[[nodiscard]] QString words_of_shift(int years);
/// How many trees there are, how they go with each other, and what was left out.
[[nodiscard]] QString summary_of(const SiteDating& dating);
/// What the page needs before it can date.
[[nodiscard]] QString what_is_needed(const SiteCores& cores);

} // namespace pithward::bench
