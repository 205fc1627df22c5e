#pragma once

#include "libcore/dating/year_series.h"
#include "libcore/results/monthly_climate.h"

#include <string>
#include <vector>

namespace pithward::results {

/// Months whose mean is held against growth. Months are counted from January of the year before the ring's (0); 12 is
/// January of the ring's year, 24 that of the year after.
struct ClimateWindow {
    int first = 0;
    int last = 0;
    friend bool operator==(const ClimateWindow&, const ClimateWindow&) = default;
};

/// The windows that are tried. A ring bears the year in which its growth began (design, section 4).
///
/// 1. North of the equator each month from May of the year before to October of the ring's year; south of it half a
///    year later, so from November of the year before to April of the year after.
/// 2. The seasons of three months within that time (north: June to August, September to November, December to February,
///    March to May, June to August), and the growing half-year (north: April to September).
///
/// Months of the year before, since growth draws on what was stored then (common practice of the trade; the choice of
/// months is ours).
[[nodiscard]] std::vector<ClimateWindow> climate_windows(Hemisphere hemisphere);

/// "Jul", "Jul before", "Jun to Aug", "Dec before to Feb", "Jan after".
[[nodiscard]] std::string words_of(const ClimateWindow& window);

/// The mean of a window's months for each ring year; no value where one of them has none.
[[nodiscard]] dating::YearSeries window_means(const MonthlyClimate& climate, const ClimateWindow& window);

} // namespace pithward::results
