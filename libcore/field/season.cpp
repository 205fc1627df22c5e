#include "libcore/field/season.h"

#include <array>

namespace pithward::field {

namespace {

constexpr std::array month_names{"January", "February", "March",     "April",   "May",      "June",
                                 "July",    "August",   "September", "October", "November", "December"};

} // namespace

std::optional<Remark> season_remark(const Site& site, const Tree& tree, const Core& core, const Reading& reading) {
    const auto month = dating::month_cored(core);
    const auto season = dating::season_of(site, core);
    if (!month || !season || !tree.living.value_or(false) || !season->has(*month) || reading.outer == OuterWood::Lost ||
        core.outer == OuterWood::Lost) {
        return std::nullopt;
    }
    const std::string cored = "cored in " + std::string(month_names[static_cast<std::size_t>(*month - 1)]) +
                              ", in its growing season: the outermost ring is unfinished";
    if (reading.outer == OuterWood::Unfinished) {
        return Remark{cored + ", so it has a breadth but no width", "leave it out of the widths, as it is", 0.9};
    }
    return Remark{cored + ", but the wood under the bark is taken as " + word(reading.outer),
                  "look at the wood under the bark and say that the ring is unfinished, or set the season", 0.7};
}

} // namespace pithward::field
