#include "libimaging/boundary/wood/fall_marks.h"

#include "libimaging/boundary/signs.h"

#include <algorithm>
#include <cmath>

namespace pithward::boundary {

std::vector<Mark> marks_from_falls(const std::vector<Fall>& falls, double px_mm) {
    std::vector<Mark> marks(falls.size());
    for (std::size_t k = 0; k < falls.size(); ++k) {
        const Fall& fall = falls[k];
        marks[k].column = fall.column;
        marks[k].signs.fall = fall.height;
        marks[k].signs.edge_mm = fall.height / std::max(fall.steepest, 1e-9) * px_mm;
        marks[k].signs.recovery = fall.rise_after / fall.height;
        marks[k].signs.lopsidedness =
            std::clamp(std::log(std::max(fall.steepest, 1e-9) / std::max(fall.steepest_rise, 1e-9)), -3.0, 3.0);
    }
    return marks;
}

void judge_marks(std::vector<Mark>& marks, const std::vector<float>& line, double level_mm, double px_mm,
                 const OddsModel& odds) {
    compare_with_neighbours(marks, px_mm);
    set_levels(marks, line, level_mm, px_mm);
    for (Mark& mark : marks) {
        mark.log_odds = log_odds(odds, mark.signs);
    }
}

void widen_deviations(std::vector<Mark>& marks, double scatter_mm) {
    for (Mark& mark : marks) {
        mark.sd_mm = std::hypot(mark.sd_mm, scatter_mm);
    }
}

} // namespace pithward::boundary
