#include "app/batch/site_record.h"
#include "libcore/dating/dated_part.h"
#include "libcore/measure/doubtful_places.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <utility>

namespace pithward::batch {

namespace {

/// The series of one site and species.
struct GroupSeries {
    std::size_t cores = 0;
    std::optional<double> latitude; ///< Of the site.
    dating::CrossdateInput input;
};

void add_series(GroupSeries& group, const report::CoreRecord& core) {
    ++group.cores;
    const WidthSeries widths = width_series(core.name, dating::dated_part(core.measured->series));
    dating::TreeSeries series{core.name, core.entry.tree.id, dating::widths_of(widths)};
    if (series.widths.size() == 0) {
        return;
    }
    if (!widths.dated) {
        group.input.undated.push_back(std::move(series));
        return;
    }
    group.input.dated.push_back(std::move(series));
    auto wood = doubtful_places(core.measured->reading, core.measured->series);
    group.input.wood.push_back(wood ? std::move(*wood) : std::vector<DoubtfulPlace>());
}

std::size_t trees_of(const std::vector<dating::TreeSeries>& series) {
    std::set<std::string> trees;
    for (const dating::TreeSeries& one : series) {
        trees.insert(one.tree);
    }
    return trees.size();
}

} // namespace

std::vector<report::DatedGroup> dated_groups(const std::vector<report::CoreRecord>& cores,
                                             const dating::CrossdateOptions& crossdating,
                                             const dating::IndexOptions& averaging) {
    std::vector<std::pair<std::string, std::string>> order;
    std::map<std::pair<std::string, std::string>, GroupSeries> groups;
    for (const report::CoreRecord& core : cores) {
        if (!core.measured) {
            continue;
        }
        const std::pair key{core.entry.site.id, core.entry.tree.species};
        if (!groups.contains(key)) {
            order.push_back(key);
        }
        groups[key].latitude = core.entry.site.latitude;
        add_series(groups[key], core);
    }
    std::vector<report::DatedGroup> results;
    for (const auto& key : order) {
        const GroupSeries& series = groups[key];
        report::DatedGroup& group = results.emplace_back();
        group.name = key.first + ", " + (key.second.empty() ? "species not told" : key.second);
        group.cores = series.cores;
        group.latitude = series.latitude;
        if (trees_of(series.input.dated) < 2) {
            group.reason =
                "Fewer than two trees of it are dated, so there is nothing to hold its series against. Their years "
                "rest on counting and on the date of coring alone.";
            continue;
        }
        group.crossdated = dating::crossdate(series.input, crossdating);
        group.chronology = dating::chronology(series.input.dated, averaging);
    }
    return results;
}

dating::YearSeries values_of(const dating::Chronology& made) {
    dating::YearSeries values;
    values.first_year = made.years.empty() ? 0 : made.years.front().year;
    values.values.resize(static_cast<Eigen::Index>(made.years.size()));
    std::ranges::transform(made.years, values.values.begin(),
                           [](const dating::ChronologyYear& year) { return year.value.value_or(dating::none); });
    return values;
}

void add_climate(report::SiteRecord& record, const results::MonthlyClimate& climate, std::string file) {
    for (report::DatedGroup& group : record.groups) {
        if (group.chronology) {
            const auto hemisphere =
                group.latitude.value_or(0.0) < 0.0 ? results::Hemisphere::South : results::Hemisphere::North;
            group.climate = results::climate_response(values_of(*group.chronology), climate, hemisphere);
        }
    }
    record.climate_file = std::move(file);
}

} // namespace pithward::batch
