#pragma once

#include "app/picture/dating/sheet.h"
#include "libcore/results/growth.h"

#include <vector>

namespace pithward::picture {

/// Mean ring width and mean basal area increment over years or ages, with how many cores stand behind each. `axis`
/// names what they are over.
[[nodiscard]] Sheet growth_sheet(std::vector<results::MeanGrowth> means, const QString& axis);

/// How many trees began in each stretch of years.
[[nodiscard]] Sheet histogram_sheet(std::vector<results::YearCount> counts);

} // namespace pithward::picture
