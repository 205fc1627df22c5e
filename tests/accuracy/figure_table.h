#pragma once

#include "tests/accuracy/case_folder.h"
#include "tests/accuracy/figures.h"

#include <nlohmann/json_fwd.hpp>

#include <span>
#include <string>
#include <vector>

namespace pithward::accuracy {

/// Figures of a group of cores.
struct FigureRow {
    std::string name; ///< "conifer-hard", "conifer-hard 2", "all".
    Figures figures;
};

/// One row for each category and strength in the order in which they come, after those of a category the category
/// itself, and at last all cores. `scores` are those of `cases`, in order.
[[nodiscard]] std::vector<FigureRow> figure_rows(std::span<const Case> cases, std::span<const CaseScore> scores);

/// Prints the rows to standard output; "-" where nothing tells of a figure.
void print_table(std::span<const FigureRow> rows);

/// The rows, and each core with its mistakes: {"groups": [...], "cores": [...]}. Shares are from 0 to 1.
[[nodiscard]] nlohmann::ordered_json table_json(std::span<const FigureRow> rows, std::span<const CaseScore> scores);

} // namespace pithward::accuracy
