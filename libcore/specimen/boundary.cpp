#include "libcore/specimen/boundary.h"

#include <algorithm>
#include <array>

namespace pithward {

Boundary boundary_from(const Candidate& candidate, BoundaryId id) {
    Boundary boundary;
    boundary.id = id;
    boundary.leg = candidate.leg;
    boundary.at = candidate.at;
    boundary.tangent = candidate.tangent;
    boundary.sd = candidate.sd;
    boundary.confidence = candidate.confidence;
    boundary.flags = candidate.flags;
    boundary.curve = candidate.curve;
    boundary.latewood = candidate.latewood;
    return boundary;
}

std::string word(Flag flag) {
    switch (flag) {
    case Flag::Faint:
        return "faint";
    case Flag::VeryNarrow:
        return "very-narrow";
    case Flag::Wedging:
        return "wedging";
    case Flag::Steep:
        return "steep";
    case Flag::WidthOutlier:
        return "width-outlier";
    case Flag::NearBreak:
        return "near-break";
    }
    return "faint";
}

std::optional<Flag> flag_from(std::string_view text) {
    static constexpr std::array all{Flag::Faint, Flag::VeryNarrow,   Flag::Wedging,
                                    Flag::Steep, Flag::WidthOutlier, Flag::NearBreak};
    const auto found = std::ranges::find_if(all, [&](Flag flag) { return word(flag) == text; });
    return found == all.end() ? std::nullopt : std::optional(*found);
}

std::string word(Origin origin) {
    return origin == Origin::Program ? "program" : "analyst";
}

std::string word(Confirmation confirmation) {
    switch (confirmation) {
    case Confirmation::None:
        return "none";
    case Confirmation::LookedAt:
        return "looked at";
    case Confirmation::InBulk:
        return "in bulk";
    }
    return "none";
}

} // namespace pithward
