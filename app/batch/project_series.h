#pragma once

#include "app/batch/series_input.h"
#include "libcore/specimen/doubtful_place.h"
#include "libcore/specimen/outcome.h"

#include <string>
#include <vector>

namespace pithward::batch {

/// A project's accepted readings made ready for dating, with what their wood shows.
struct ProjectSeries {
    SeriesInput input;                            ///< Trees are the project's.
    std::vector<std::vector<DoubtfulPlace>> wood; ///< Of each dated series.
};

/// Whether a file is named like a project.
[[nodiscard]] bool is_project(const std::string& file);

[[nodiscard]] Outcome<ProjectSeries> read_project_series(const std::string& file);

/// The series of files of any series format, or of one project.
[[nodiscard]] Outcome<SeriesInput> read_series_or_project(const std::vector<std::string>& files);

} // namespace pithward::batch
