#include "libcore/specimen/wood.h"

#include <algorithm>

namespace pithward {

std::string word(WoodType wood) {
    switch (wood) {
    case WoodType::Conifer:
        return "conifer";
    case WoodType::RingPorous:
        return "ring-porous";
    case WoodType::DiffusePorous:
        return "diffuse-porous";
    }
    return "conifer";
}

std::string word(OuterWood outer) {
    switch (outer) {
    case OuterWood::Complete:
        return "complete";
    case OuterWood::Unfinished:
        return "unfinished";
    case OuterWood::Lost:
        return "lost";
    case OuterWood::Unknown:
        return "unknown";
    }
    return "unknown";
}

std::optional<WoodType> wood_type_from(std::string_view text) {
    const auto found = std::ranges::find_if(all_wood_types, [&](WoodType wood) { return word(wood) == text; });
    return found == all_wood_types.end() ? std::nullopt : std::optional(*found);
}

std::optional<OuterWood> outer_wood_from(std::string_view text) {
    for (const auto outer : {OuterWood::Complete, OuterWood::Unfinished, OuterWood::Lost, OuterWood::Unknown}) {
        if (word(outer) == text) {
            return outer;
        }
    }
    return std::nullopt;
}

} // namespace pithward
