#include "libcore/field/outer.h"

namespace pithward::field {

std::optional<Remark> lost_wood_remark(const Core& core, const Reading& reading) {
    if (core.outer != OuterWood::Lost && reading.outer != OuterWood::Lost) {
        return std::nullopt;
    }
    return Remark{"bark or outer wood is lost, so an unknown number of outer rings is gone and the date of coring does "
                  "not date the series; its outermost year is the earliest possible last year",
                  "date it by the other cores of the site", 0.95};
}

} // namespace pithward::field
