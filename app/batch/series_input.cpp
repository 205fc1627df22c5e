#include "app/batch/series_input.h"

#include "libcore/dating/trees.h"
#include "libcore/formats/series_formats.h"

#include <algorithm>
#include <limits>
#include <set>

namespace pithward::batch {

namespace {

constexpr double most_cells = 50e6; ///< Years times series: 400 MB a table.

/// A name that isn't taken yet: "A", "A_2", "A_3", ...
std::string free_name(const std::string& id, std::set<std::string>& taken) {
    std::string name = id;
    for (int n = 2; !taken.insert(name).second; ++n) {
        name = id + "_" + std::to_string(n);
    }
    return name;
}

double cells_of(const std::vector<dating::TreeSeries>& site) {
    double first = std::numeric_limits<double>::infinity();
    double last = -first;
    for (const dating::TreeSeries& series : site) {
        first = std::min(first, static_cast<double>(series.widths.first_year));
        last = std::max(last, static_cast<double>(series.widths.last_year()));
    }
    return site.empty() ? 0.0 : (last - first + 1.0) * static_cast<double>(site.size());
}

void set_trees(SeriesInput& input) {
    std::vector<std::string> ids;
    for (const dating::TreeSeries& series : input.dated) {
        ids.push_back(series.id);
    }
    const dating::Trees trees = dating::trees_by_stem(ids);
    for (std::size_t i = 0; i < ids.size(); ++i) {
        input.dated[i].tree = trees.of_series[i];
    }
    for (dating::TreeSeries& series : input.undated) {
        series.tree = series.id;
    }
    if (!ids.empty()) {
        input.remarks.push_back(trees.remark);
    }
}

} // namespace

Outcome<SeriesInput> read_series(const std::vector<std::string>& files) {
    SeriesInput input;
    std::set<std::string> taken;
    for (const std::string& file : files) {
        const auto table = read_series_file(file);
        if (!table) {
            return tl::unexpected(table.error());
        }
        for (const std::string& remark : table->remarks) {
            input.remarks.push_back(Fault{file, remark, ""}.line());
        }
        for (const WidthSeries& series : table->series) {
            dating::YearSeries widths = dating::widths_of(series);
            if (widths.size() == 0) {
                input.remarks.push_back(
                    Fault{file, "series " + series.id + " has no widths and is left out", ""}.line());
                continue;
            }
            const std::string name = free_name(series.id, taken);
            if (name != series.id) {
                input.remarks.push_back(
                    Fault{file, "series " + series.id + " is there twice: this one is called " + name, ""}.line());
            }
            (series.dated ? input.dated : input.undated).push_back({name, name, std::move(widths)});
        }
    }
    if (input.dated.empty() && input.undated.empty()) {
        return fail(files.front(), "there are no widths in it", "choose a file that holds series");
    }
    if (cells_of(input.dated) > most_cells) {
        return fail(files.front(), "its series lie too many years apart to be compared", "divide them by period");
    }
    set_trees(input);
    return input;
}

} // namespace pithward::batch
