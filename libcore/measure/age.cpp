#include "libcore/measure/age.h"

#include <algorithm>
#include <cmath>

namespace pithward {

bool pith_floats(const Reading& reading) {
    return std::ranges::any_of(reading.breaks, [](const Break& stretch) {
        return stretch.kind == Break::Kind::LostWood && !stretch.rings_lost;
    });
}

std::optional<YearRange> pith_year(const Reading& reading, const RingSeries& series) {
    if (!reading.pith || series.rings.empty() || !series.rings.back().year || pith_floats(reading)) {
        return std::nullopt;
    }
    const Year oldest = *series.rings.back().year;
    const Pith& pith = *reading.pith;
    return YearRange{oldest - pith.missing_rings, oldest - pith.missing_high, oldest - pith.missing_low};
}

YearRange establishment_year(const YearRange& pith, const HeightAllowance& allowance) {
    constexpr double two_sided_90 = 1.645; // deviations of a normal distribution
    const double spread = two_sided_90 * allowance.sd;
    const double earlier = std::hypot(static_cast<double>(pith.year - pith.low), spread);
    const double later = std::hypot(static_cast<double>(pith.high - pith.year), spread);
    const double middle = pith.year.value() - allowance.years;
    const auto whole = [](double year) { return Year(static_cast<int>(std::lround(year))); };
    return {whole(middle), whole(middle - earlier), whole(middle + later)};
}

std::optional<Age> age_of(const Reading& reading, const RingSeries& series,
                          const std::optional<HeightAllowance>& allowance) {
    const auto pith = pith_year(reading, series);
    if (!pith) {
        return std::nullopt;
    }
    return Age{*pith, allowance, allowance ? std::optional(establishment_year(*pith, *allowance)) : std::nullopt};
}

} // namespace pithward
