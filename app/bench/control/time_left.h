#pragma once

#include <optional>

namespace pithward::bench {

/// How long work will still take by how long its share has taken, in seconds. Nothing while too little is done to tell:
/// in its first two seconds, or below a twentieth.
[[nodiscard]] inline std::optional<double> seconds_left(double elapsed_s, double share_done) {
    constexpr double least_s = 2.0;
    constexpr double least_share = 0.05;
    if (elapsed_s < least_s || share_done < least_share) {
        return std::nullopt;
    }
    return share_done >= 1.0 ? 0.0 : elapsed_s * (1.0 - share_done) / share_done;
}

} // namespace pithward::bench
