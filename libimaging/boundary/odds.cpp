#include "libimaging/boundary/odds.h"

#include <algorithm>
#include <cmath>

namespace pithward::boundary {

std::array<double, 9> terms(const Signs& signs) {
    return {std::log(std::max(signs.fall, 1e-3)),
            std::log(std::clamp(signs.relative_fall, 1e-2, 2.0)),
            std::max(0.0, std::log(std::max(signs.relative_edge, 1e-2))),
            std::clamp(signs.before, -1.5, 1.5),
            std::clamp(signs.after, -1.5, 1.5),
            std::min(signs.recovery, 1.2),
            signs.lopsidedness,
            signs.support,
            std::min(signs.support_left, signs.support_right)};
}

double log_odds(const OddsModel& model, const Signs& signs) {
    const std::array<double, 9> weights{model.log_fall,   model.log_relative_fall, model.softness,     model.before,
                                        model.after,      model.recovery,          model.lopsidedness, model.support,
                                        model.weaker_side};
    const std::array<double, 9> values = terms(signs);
    double sum = model.constant;
    for (std::size_t k = 0; k < weights.size(); ++k) {
        sum += weights[k] * values[k];
    }
    return std::clamp(sum, -12.0, 12.0);
}

} // namespace pithward::boundary
