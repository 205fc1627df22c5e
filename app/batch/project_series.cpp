#include "app/batch/project_series.h"

#include "app/batch/accepted_readings.h"
#include "libcore/dating/dated_part.h"
#include "libcore/measure/doubtful_places.h"

#include <algorithm>
#include <filesystem>

namespace pithward::batch {

namespace {

Outcome<void> add_reading(ProjectSeries& result, const MeasuredReading& measured) {
    const std::string& core = measured.reading.core;
    const WidthSeries widths = width_series(core, dating::dated_part(measured.series));
    dating::TreeSeries series{core, core, dating::widths_of(widths)};
    if (series.widths.size() == 0) {
        result.input.remarks.push_back("series " + core + " has no widths and is left out");
        return {};
    }
    if (!widths.dated) {
        result.input.undated.push_back(std::move(series));
        return {};
    }
    if (measured.note && !measured.note->tree.empty()) {
        series.tree = measured.note->site + " " + measured.note->tree;
    }
    auto wood = doubtful_places(measured.reading, measured.series);
    if (!wood) {
        return tl::unexpected(std::move(wood.error()));
    }
    result.input.dated.push_back(std::move(series));
    result.wood.push_back(std::move(*wood));
    return {};
}

} // namespace

bool is_project(const std::string& file) {
    return std::filesystem::path(file).extension() == ".pithward";
}

Outcome<ProjectSeries> read_project_series(const std::string& file) {
    const auto project = record::Project::open(file, record::Project::Access::Read);
    if (!project) {
        return tl::unexpected(project.error());
    }
    const auto accepted = accepted_readings(*project, false);
    if (!accepted) {
        return tl::unexpected(accepted.error());
    }
    ProjectSeries result;
    for (const Fault& fault : accepted->left_out) {
        result.input.remarks.push_back(Fault{fault.where, "left out: " + fault.what, fault.remedy}.line());
    }
    for (const MeasuredReading& measured : accepted->readings) {
        if (auto added = add_reading(result, measured); !added) {
            return tl::unexpected(Fault{file, measured.reading.core + ": " + added.error().what, added.error().remedy});
        }
    }
    if (result.input.dated.empty() && result.input.undated.empty()) {
        return fail(file, "no core of it has widths yet", "run pithward measure on it");
    }
    return result;
}

Outcome<SeriesInput> read_series_or_project(const std::vector<std::string>& files) {
    if (std::ranges::none_of(files, is_project)) {
        return read_series(files);
    }
    if (files.size() > 1) {
        return fail(files.front(), "a project is taken alone", "name it alone, or export its series first");
    }
    return read_project_series(files.front()).map([](ProjectSeries read) { return std::move(read.input); });
}

} // namespace pithward::batch
