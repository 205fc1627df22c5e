#pragma once

#include "app/progress/progress_rows.h"

#include <QString>

namespace pithward::bench {

/// "Scanned", "Measured", ...
[[nodiscard]] QString title_of(progress::Stage stage);
/// How far a stage of a core is: "109 rings", "12 of 110", "1915 to 2023".
[[nodiscard]] QString words_of(const ProgressRow& row, progress::Stage stage);
/// The same for who can't see the form beside it: "1915 to 2023, wants a look".
[[nodiscard]] QString spoken(const ProgressRow& row, progress::Stage stage);
/// What stands against a core, the most pressing alone and how many more: "open findings: 2, and 1 more".
[[nodiscard]] QString against_in_short(const ProgressRow& row);
/// All that stands against a core, as one sentence; that nothing does.
[[nodiscard]] QString against_in_full(const ProgressRow& row);
/// "Settle findings"; of a core that is done with, "Done".
[[nodiscard]] QString words_of(progress::Step step);
/// What comes next for the site: "Next for the site: cores with open findings: 12, HW01A first".
[[nodiscard]] QString next_of_site(const progress::SiteProgress& site, const std::vector<ProgressRow>& rows);
/// For the button that goes there.
[[nodiscard]] QString button_of_site(const progress::SiteProgress& site);

} // namespace pithward::bench
