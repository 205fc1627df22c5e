#include "libcore/formats/age_csv.h"

#include "libcore/formats/csv_rows.h"
#include "libcore/formats/json_numbers.h"
#include "libcore/measure/basal_area.h"

namespace pithward {

using namespace formats;

namespace {

std::string cell(double value) {
    return json_number(value, millimetre_digits).dump();
}

std::string years_cells(const std::optional<YearRange>& range) {
    if (!range) {
        return ",,,";
    }
    std::string cells;
    for (const Year year : {range->year, range->low, range->high}) {
        cells += ',';
        cells += std::to_string(year.value());
    }
    return cells;
}

} // namespace

void write_ages_csv(std::ostream& out, std::span<const MeasuredReading> readings) {
    out << "site,tree,core,pith_year,pith_year_low,pith_year_high,years_to_height,years_to_height_sd,"
           "establishment_year,establishment_year_low,establishment_year_high\n";
    for (const MeasuredReading& one : readings) {
        const auto age = age_of(one.reading, one.series, one.allowance);
        const auto& allowance = one.allowance;
        out << csv_field(one.note ? one.note->site : std::string()) << ','
            << csv_field(one.note ? one.note->tree : std::string()) << ',' << csv_field(one.reading.core)
            << years_cells(age ? std::optional(age->pith) : std::nullopt) << ','
            << (allowance ? cell(allowance->years) : "") << ',' << (allowance ? cell(allowance->sd) : "")
            << years_cells(age ? age->establishment : std::nullopt) << '\n';
    }
}

void write_basal_area_csv(std::ostream& out, std::span<const MeasuredReading> readings) {
    out << "core,year,ring,width_mm,basal_area_mm2,basal_area_low_mm2,basal_area_high_mm2\n";
    for (const MeasuredReading& one : readings) {
        const auto areas = basal_area_increments(one.reading, one.series);
        for (std::size_t i = one.series.rings.size(); i-- > 0;) {
            const Ring& ring = one.series.rings[i];
            out << csv_field(one.reading.core) << ',' << (ring.year ? std::to_string(ring.year->value()) : "") << ','
                << ring.number << ',' << (ring.width ? cell(ring.width->value()) : "");
            if (areas[i]) {
                out << ',' << cell(areas[i]->mm2) << ',' << cell(areas[i]->low_mm2) << ',' << cell(areas[i]->high_mm2);
            } else {
                out << ",,,";
            }
            out << '\n';
        }
    }
}

} // namespace pithward
