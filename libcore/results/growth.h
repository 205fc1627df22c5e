#pragma once

#include "libcore/measure/basal_area.h"
#include "libcore/specimen/ring_series.h"

#include <optional>
#include <span>
#include <vector>

namespace pithward::results {

/// A core for means of growth.
struct GrowthCore {
    RingSeries series;
    std::vector<std::optional<BasalAreaIncrement>> basal_area; ///< One for each ring; may be empty.
    std::optional<Year> pith; ///< Its year at the height of the core; nothing where it is not known.
};

/// Mean growth in one year, or at one age.
struct MeanGrowth {
    int at = 0; ///< The calendar year, or the cambial age.
    double width_mm = 0.0;
    int cores = 0;                        ///< With a width.
    std::optional<double> basal_area_mm2; ///< Nothing where no core tells it.
    int cores_with_area = 0;
};

/// Arithmetic means by calendar year, oldest first, of the cores that have a value. A locally absent ring counts as 0,
/// a gap not at all. These are means of what is there: as cores drop out toward the past, older and other trees remain,
/// so a slope of them need not be one of growth.
[[nodiscard]] std::vector<MeanGrowth> growth_by_year(std::span<const GrowthCore> cores);

/// The same by cambial age, youngest first: the ring's year less the pith's, plus 1, so the ring round the pith has age
/// 1 (common practice of the trade). Cores without the year of their pith are left out. It is the age at the height of
/// the core, with the doubt about the pith.
[[nodiscard]] std::vector<MeanGrowth> growth_by_age(std::span<const GrowthCore> cores);

/// How many trees fall into a stretch of years.
struct YearCount {
    int from = 0;
    int to = 0;
    int trees = 0;
};

/// Years of trees counted in stretches of `length` years (at least 1) that begin at its multiples, from the first that
/// has one to the last, without gaps.
[[nodiscard]] std::vector<YearCount> year_histogram(std::span<const int> years, int length);

} // namespace pithward::results
