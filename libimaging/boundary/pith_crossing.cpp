#include "libimaging/boundary/pith_crossing.h"

#include "libimaging/boundary/relief.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

namespace pithward::boundary {

namespace {

constexpr double least_side_mm = 4.0;     ///< A shorter side has no say.
constexpr double edge_left_out_mm = 0.15; ///< Left out along the core's edges, whose texture runs along.
constexpr double most_half_mm = 2.2;      ///< Lanes further off the path add little.
constexpr double bend_within_mm = 1.5;    ///< Curvature is fitted within this of the path ...
constexpr double bend_step_mm = 0.5;      ///< ... for each such length.
constexpr double bend_from_mm = 2.5;      ///< Nearer to the pith the flow of the rings means nothing ...
constexpr double bend_to_mm = 14.0;       ///< ... and further off they are nearly straight.
constexpr double greatest_bend = 0.5;     ///< 1/mm.
/// Log odds: so much for each unit of round texture over a usual one, and of turnover. From rendered cores.
constexpr double usual_texture = 10.0;
constexpr double per_texture = 0.5;
constexpr double usual_turnover = 0.05;
constexpr double least_turnover = -0.15; ///< Vessels hide the bend: little of it is no sure sign against a pith.
constexpr double most_turnover = 0.6;
constexpr double per_turnover = 8.0;
constexpr double surest = 12.0;

/// Curvature of the rings along the path, 1/mm, one value for each `bend_step_mm`: the square term of the flow.
std::vector<double> curvatures(const FlatStrip& flat) {
    const int half = std::min(flat.centre(), static_cast<int>(bend_within_mm / flat.lane_mm));
    double squares = 0.0;
    double fourths = 0.0;
    double number = 0.0;
    for (int lane = -half; lane <= half; ++lane) {
        const double u = lane * flat.lane_mm;
        number += 1.0;
        squares += u * u;
        fourths += u * u * u * u;
    }
    const double spread = fourths - squares * squares / number;
    const int first = std::max(0, static_cast<int>(flat.column(0.0)));
    const int window = std::max(1, static_cast<int>(std::lround(bend_step_mm / flat.px_mm)));
    std::vector<double> out;
    for (int from = first; from + window <= flat.columns() && flat.s(from + window) <= flat.path_mm; from += window) {
        double sum = 0.0;
        for (int lane = -half; lane <= half; ++lane) {
            const double u = lane * flat.lane_mm;
            const cv::Mat1f row = flat.flow_mm.row(flat.centre() + lane).colRange(from, from + window);
            sum += (u * u - squares / number) * cv::mean(row)[0];
        }
        out.push_back(spread > 0.0 ? std::clamp(2.0 * sum / spread, -greatest_bend, greatest_bend) : 0.0);
    }
    return out;
}

} // namespace

double turnover(const FlatStrip& flat, double s_mm) {
    const std::vector<double> bends = curvatures(flat);
    double least = std::numeric_limits<double>::infinity();
    for (const double sign : {1.0, -1.0}) {
        const double side_mm = sign > 0.0 ? s_mm : flat.path_mm - s_mm;
        double sum = 0.0;
        double squares = 0.0;
        for (std::size_t k = 0; k < bends.size(); ++k) {
            const double off = sign * (s_mm - (static_cast<double>(k) + 0.5) * bend_step_mm);
            if (off >= bend_from_mm && off <= bend_to_mm) {
                sum += sign * bends[k] / off;
                squares += 1.0 / (off * off);
            }
        }
        if (side_mm >= least_side_mm && squares > 0.0) {
            least = std::min(least, sum / std::sqrt(squares));
        }
    }
    return std::isfinite(least) ? least : 0.0;
}

std::optional<RoundTexture> round_centre(const Lanes& lanes) {
    const double half = std::min(most_half_mm, 0.5 * lanes.count() * lanes.lane_mm - edge_left_out_mm);
    const Lanes inner = middle_of(lanes, half);
    return round_texture(relief_of(inner).tone, inner);
}

std::optional<PithCrossing> pith_crossing(const std::optional<RoundTexture>& centre, const FlatStrip& flat) {
    if (!centre || centre->s_mm <= 0.0 || centre->s_mm >= flat.path_mm) {
        return std::nullopt;
    }
    double texture = std::numeric_limits<double>::infinity();
    if (centre->s_mm >= least_side_mm) {
        texture = std::min(texture, centre->before);
    }
    if (flat.path_mm - centre->s_mm >= least_side_mm) {
        texture = std::min(texture, centre->after);
    }
    if (!std::isfinite(texture)) {
        return std::nullopt;
    }
    const double turned = std::clamp(turnover(flat, centre->s_mm), least_turnover, most_turnover);
    const double log_odds = per_texture * (texture - usual_texture) + per_turnover * (turned - usual_turnover);
    return PithCrossing{{centre->s_mm, centre->u_mm}, std::clamp(log_odds, -surest, surest)};
}

} // namespace pithward::boundary
