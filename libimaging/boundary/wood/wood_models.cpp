#include "libimaging/boundary/wood/wood_model.h"

#include <algorithm>
#include <array>

namespace pithward::boundary {

std::span<const WoodModel> wood_models() {
    static const std::array all{
        conifer_model(),
        ring_porous_model(),
        diffuse_porous_model(),
    };
    return all;
}

const WoodModel& wood_model(WoodType type) {
    const auto models = wood_models();
    const auto found = std::ranges::find(models, type, &WoodModel::type);
    return found == models.end() ? models.front() : *found;
}

} // namespace pithward::boundary
