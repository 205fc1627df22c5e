#include "app/picture/dating/chronology_sheet.h"
#include "app/picture/dating/crossdate_sheets.h"
#include "app/report/sheet_file.h"
#include "app/report/site/chapters.h"
#include "app/report/site/figures_in_words.h"

#include <algorithm>

namespace pithward::report {

namespace {

constexpr double dating_breadth = 640.0; ///< Of the years, in points of a sheet.
constexpr double dating_page = 900.0;

std::string said_of_series(const dating::DatedResult& series) {
    std::string said;
    const auto add = [&](const std::string& words) { said += (said.empty() ? "" : "; ") + words; };
    for (const dating::Slip& slip : series.slips) {
        add(words_of(slip) + ", probability " + fixed(slip.probability, 2));
    }
    if (series.whole_shift != 0) {
        add("all of it fits better with " + fixed(series.whole_shift, 0) + " added to its years");
    }
    for (const std::string& remark : series.remarks) {
        add(remark);
    }
    return said;
}

Table series_table(const DatedGroup& group) {
    Table table;
    table.caption = group.name +
                    ": each series against the mean of the others of other trees. n: years in common. Signs: "
                    "share of changes in the same direction. Sensitivity: mean sensitivity of the widths; AR(1): their "
                    "first-order autocorrelation.";
    table.columns = {{"core", 1.3},
                     {"years", 1.4},
                     {"n", 0.6, true},
                     {"r", 0.7, true},
                     {"t", 0.7, true},
                     {"signs", 0.7, true},
                     {"sensitivity", 1.1, true},
                     {"AR(1)", 0.8, true},
                     {"what the others say", 3.6}};
    for (const dating::DatedResult& one : group.crossdated.dated) {
        const bool compared = one.agreement.r.has_value();
        table.rows.push_back({one.id, told_years(one.first_year, one.last_year),
                              compared ? std::to_string(one.agreement.overlap) : not_known, fixed(one.agreement.r, 2),
                              compared ? fixed(std::min(999.0, one.agreement.t), 1) : not_known,
                              fixed(one.signs.share, 2), fixed(one.mean_sensitivity, 2), fixed(one.ar1, 2),
                              or_dash(said_of_series(one))});
    }
    return table;
}

std::string with_interval(const std::optional<double>& value, const std::optional<double>& low,
                          const std::optional<double>& high) {
    std::string text = fixed(value, 2);
    return value && low && high ? text + " (" + fixed(*low, 2) + " to " + fixed(*high, 2) + ")" : text;
}

Table site_table(const DatedGroup& group) {
    const dating::SiteResult& site = group.crossdated.site;
    Table table;
    table.caption = group.name + ": what the series have in common, of the indices used for crossdating.";
    table.columns = {{"", 2.4}, {"", 3.0}};
    table.rows = {
        {"series, trees", std::to_string(site.series) + ", " + std::to_string(site.trees)},
        {"mean r of the series with the others", fixed(site.series_intercorrelation, 2)},
        {"mean r of all pairs", fixed(site.variance.r_bar, 2)},
        {"mean r between trees, within trees", fixed(site.variance.between, 2) + ", " + fixed(site.variance.within, 2)},
        {"EPS (90 % interval)", with_interval(site.variance.eps, site.variance.eps_low, site.variance.eps_high)},
        {"signal-to-noise", fixed(site.variance.signal_to_noise, 1)},
        {"mean sensitivity, AR(1) of widths", fixed(site.mean_sensitivity, 2) + ", " + fixed(site.ar1, 2)},
        {"length of a segment, years", std::to_string(group.crossdated.length)},
    };
    return table;
}

void add_undated(std::vector<Block>& blocks, const DatedGroup& group) {
    if (group.crossdated.undated.empty()) {
        return;
    }
    Table table;
    table.caption = group.name +
                    ": series without years, and where they may belong: the three best positions. Chance: that "
                    "the best of all positions tried is as good by chance.";
    table.columns = {{"core", 1.3},    {"rings", 0.8, true}, {"years", 1.6},       {"r", 0.7, true},
                     {"t", 0.7, true}, {"n", 0.6, true},     {"chance", 1.2, true}};
    for (const dating::UndatedResult& series : group.crossdated.undated) {
        if (series.places.empty()) {
            table.rows.push_back({series.id, std::to_string(series.rings), "no position with enough years in common",
                                  not_known, not_known, not_known, not_known});
        }
        for (std::size_t k = 0; k < std::min<std::size_t>(3, series.places.size()); ++k) {
            const dating::RankedMatch& place = series.places[k];
            table.rows.push_back({k == 0 ? series.id : "", k == 0 ? std::to_string(series.rings) : "",
                                  told_years(series.first_year_at(place), series.last_year_at(place)),
                                  fixed(place.match.r, 2), fixed(place.match.t, 1), std::to_string(place.match.overlap),
                                  place.chance_of_best < 0.0001 ? "under 0.0001" : fixed(place.chance_of_best, 4)});
        }
    }
    table.note = "A position is a proposal. The years of such a series are set by a person, who looks at the wood.";
    blocks.push_back(std::move(table));
}

void add_pictures(std::vector<Block>& blocks, const std::vector<std::string>& pictures, const std::string& caption,
                  const std::string& alternative) {
    for (std::size_t i = 0; i < pictures.size(); ++i) {
        blocks.push_back(Figure{i == 0 ? caption : caption + " Continued.", alternative, "image/svg+xml", pictures[i]});
    }
}

std::string decade_cell(const std::vector<dating::ChronologyYear>& years, int year) {
    const int first = years.front().year;
    const auto index = static_cast<std::size_t>(year - first);
    if (year < first || index >= years.size()) {
        return "";
    }
    const dating::ChronologyYear& one = years[index];
    return one.value ? fixed(*one.value, 3) + "/" + std::to_string(one.series) : not_known;
}

Table chronology_table(const DatedGroup& group, const dating::Chronology& chronology) {
    Table table;
    table.caption = group.name + ": the chronology, index of each year / number of series. A row holds the "
                                 "ten years from the one named.";
    table.columns.push_back({"from", 0.7});
    for (int k = 0; k < 10; ++k) {
        table.columns.push_back({"+" + std::to_string(k), 1.0, true});
    }
    const auto& years = chronology.years;
    const int first = years.front().year;
    int decade = first - ((first % 10) + 10) % 10;
    for (; decade <= years.back().year; decade += 10) {
        std::vector<std::string> row{std::to_string(decade)};
        for (int k = 0; k < 10; ++k) {
            row.push_back(decade_cell(years, decade + k));
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

void add_chronology(std::vector<Block>& blocks, const DatedGroup& group) {
    if (!group.chronology || group.chronology->years.empty()) {
        return;
    }
    const dating::Chronology& chronology = *group.chronology;
    add_pictures(blocks, sheet_svgs(picture::chronology_sheet(chronology, dating_breadth), dating_page),
                 group.name +
                     ": the chronology with its 90 % interval, the number of series and trees, and EPS over windows "
                     "of 50 years.",
                 "Site chronology over time with its interval, sample depth and signal");
    std::string pointers;
    for (const dating::PointerYear& year : chronology.pointer_years) {
        pointers += (pointers.empty() ? "" : ", ") + std::to_string(year.year) + (year.wide ? " (wide)" : " (narrow)");
    }
    if (!pointers.empty()) {
        blocks.push_back(Paragraph{
            "Years in which most trees grew much more or much less than in the four years before: " + pointers + "."});
    }
    if (!chronology.remarks.empty()) {
        blocks.push_back(Bullets{chronology.remarks});
    }
    blocks.push_back(chronology_table(group, chronology));
}

void add_group(std::vector<Block>& blocks, const DatedGroup& group) {
    blocks.push_back(Heading{2, group.name});
    if (!group.reason.empty()) {
        blocks.push_back(Paragraph{group.reason});
        return;
    }
    blocks.push_back(series_table(group));
    blocks.push_back(site_table(group));
    add_undated(blocks, group);
    if (!group.crossdated.remarks.empty()) {
        blocks.push_back(Bullets{group.crossdated.remarks});
    }
    add_pictures(blocks, sheet_svgs(picture::agreement_sheet(group.crossdated, dating_breadth), dating_page),
                 group.name + ": where each series agrees with the others, over segments of " +
                     std::to_string(group.crossdated.length) + " years.",
                 "Correlation of each series with the mean of the others, in segments through time");
    add_chronology(blocks, group);
}

} // namespace

void add_dating(std::vector<Block>& blocks, const SiteRecord& record) {
    blocks.push_back(Heading{1, "Dating and chronology"});
    if (record.groups.empty()) {
        blocks.push_back(Paragraph{"No core has been measured yet."});
    }
    for (const DatedGroup& group : record.groups) {
        add_group(blocks, group);
    }
}

} // namespace pithward::report
