#include "libimaging/boundary/wood/wood_model.h"

#include <array>

namespace pithward::boundary {

std::span<const WoodModel> wood_models() {
    static const std::array all{
        conifer_model(),
    };
    return all;
}

} // namespace pithward::boundary
