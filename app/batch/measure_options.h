#pragma once

#include "app/batch/scan_scale.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/units.h"
#include "libcore/specimen/wood.h"

#include <CLI/CLI.hpp>

#include <optional>
#include <string>
#include <vector>

namespace pithward::batch {

inline constexpr int earliest_year = -20'000; ///< That a ring may bear, as in every series format.

/// What `pithward measure` was told, as words.
struct MeasureOptions {
    std::vector<std::string> scans;
    std::string path;
    std::string from; ///< Empty: bark.
    std::optional<double> dpi;
    std::vector<std::string> rulers;
    std::string graduation = "auto";
    std::optional<double> apart_mm;
    std::string wood = "auto";
    std::string outer = "unknown";
    std::optional<int> last_year;
    std::string json;
    std::string csv;
    std::string decadal;
    std::string overlay;
    std::string by;                   ///< Who does it, for a project's history.
    std::vector<std::string> outside; ///< Folders outside of a project's own that may be read.
};

/// The same with its words understood.
struct MeasureTask {
    std::vector<ImagePoint> path; ///< From the bark; empty: every core found.
    RulerTask ruler;
    std::optional<WoodType> wood; ///< Nothing: judged.
    OuterWood outer = OuterWood::Unknown;
    std::optional<Year> last_year;
};

void add_options(CLI::App& parser, MeasureOptions& options);

/// Checks what can be checked before any scan is opened.
[[nodiscard]] Outcome<MeasureTask> task_of(const MeasureOptions& options);

/// Points from "x,y x,y ...", the value of an option. Fails on anything else, naming the option and the point.
[[nodiscard]] Outcome<std::vector<ImagePoint>> points_from(const std::string& option, const std::string& text);

} // namespace pithward::batch
