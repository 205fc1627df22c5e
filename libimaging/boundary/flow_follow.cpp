#include "libimaging/boundary/flow_follow.h"

#include "libimaging/boundary/filters.h"

#include <opencv2/core/utility.hpp>

#include <algorithm>
#include <cmath>

namespace pithward::boundary {

namespace {

constexpr double even_mm = 0.5;        ///< Gradients are evened out over this length, so that faint rings count too ...
constexpr double even_floor = 0.15;    ///< ... but not below this share of the usual one.
constexpr float lane_inertia = 0.15F;  ///< Share of the evened energy under which a lane is taken as unmoved.
constexpr float cut_at = 2.0F;         ///< Differences are cut at so many usual ones.
constexpr double from_afar = 0.05;     ///< Weight of a longer window, for places where little is seen.
constexpr double afar_window = 4.0;    ///< It is this much longer.
constexpr float greatest_move = 0.02F; ///< In one pass, mm.
constexpr double like_mm = 1.0;        ///< A lane's likeness to those before it is taken over this length.
constexpr float strange = 0.2F;        ///< Correlation at which it is not of the same wood ...
constexpr float familiar = 0.6F;       ///< ... and at which it surely is.
constexpr int refits = 2;              ///< Least squares, repeated.
constexpr int next_to_path = 2;        ///< So many lanes on both sides of the path are the first to be laid onto.
constexpr double alike_lanes_mm = 0.2; ///< Neighbouring lanes move alike.
constexpr double around_path_mm = 1.2; ///< The move at the path is taken from the lanes within this.

/// Running mean of the lanes before the present one, laid straight. It begins with the lanes next to the path.
class LanesBefore {
public:
    LanesBefore(const cv::Mat1f& soft, const cv::Mat1f& solid, double memory)
        : share_(1.0 / memory) {
        const int centre = soft.rows / 2;
        const cv::Range next(std::max(0, centre - next_to_path), std::min(soft.rows, centre + next_to_path + 1));
        cv::reduce(soft.rowRange(next).mul(solid.rowRange(next)), sum_, 0, cv::REDUCE_AVG);
        cv::reduce(solid.rowRange(next), mass_, 0, cv::REDUCE_AVG);
    }

    void add(const cv::Mat1f& lane, const cv::Mat1f& solid) {
        sum_ = (1.0 - share_) * sum_ + share_ * lane.mul(solid);
        mass_ = (1.0 - share_) * mass_ + share_ * solid;
    }

    [[nodiscard]] cv::Mat1f mean() const { return sum_ / cv::max(mass_, 1e-3F); }

private:
    cv::Mat1f sum_;
    cv::Mat1f mass_;
    double share_;
};

cv::Mat1f gradient_of(const cv::Mat1f& line, double px_mm) {
    cv::Mat1f gradient(1, line.cols);
    const int last = line.cols - 1;
    for (int c = 0; c <= last; ++c) {
        const int before = std::max(0, c - 1);
        const int after = std::min(last, c + 1);
        gradient(0, c) = (line(0, after) - line(0, before)) / static_cast<float>((after - before) * px_mm);
    }
    return gradient;
}

cv::Mat1f over_window(const cv::Mat1f& values, double window) {
    const cv::Mat1f near = smooth(values, 0.0, window);
    return near + from_afar * smooth(near, 0.0, afar_window * window);
}

/// How far a lane has to be moved further (mm) to lie on the reference.
cv::Mat1f further(const cv::Mat1f& lane, const cv::Mat1f& solid, const cv::Mat1f& reference, double px_mm,
                  double window_mm) {
    const cv::Mat1f gradient = gradient_of(reference, px_mm);
    cv::Mat1f usual = smooth(gradient.mul(gradient), 0.0, even_mm / px_mm);
    usual += even_floor * cv::mean(usual)[0] + 1e-9;
    const cv::Mat1f difference = lane - reference;
    const cv::Mat1f spread = smooth(difference.mul(difference), 0.0, even_mm / px_mm);
    cv::Mat1f energy(1, lane.cols);
    cv::Mat1f product(1, lane.cols);
    for (int c = 0; c < lane.cols; ++c) {
        const float most = cut_at * std::sqrt(spread(0, c));
        const float weight = solid(0, c) / usual(0, c);
        energy(0, c) = gradient(0, c) * gradient(0, c) * weight;
        product(0, c) = gradient(0, c) * std::clamp(difference(0, c), -most, most) * weight;
    }
    const double window = window_mm / px_mm;
    const cv::Mat1f move = -over_window(product, window) / (over_window(energy, window) + lane_inertia);
    return cv::max(cv::min(move, greatest_move), -greatest_move);
}

/// 0 to 1: how surely a lane shows the wood of the reference, by their correlation over the window. A crack along the
/// path shows another.
cv::Mat1f likeness(const cv::Mat1f& lane, const cv::Mat1f& reference, double window) {
    const cv::Mat1f both = smooth(lane.mul(reference), 0.0, window);
    const cv::Mat1f own = smooth(lane.mul(lane), 0.0, window);
    const cv::Mat1f theirs = smooth(reference.mul(reference), 0.0, window);
    cv::Mat1f like(1, lane.cols);
    for (int c = 0; c < lane.cols; ++c) {
        const float r = both(0, c) / std::sqrt(own(0, c) * theirs(0, c) + 1e-9F);
        like(0, c) = std::clamp((r - strange) / (familiar - strange), 0.0F, 1.0F);
    }
    return like;
}

cv::Mat1f moved(const cv::Mat1f& lane, const cv::Mat1f& move_mm, double px_mm) {
    cv::Mat1f out(1, lane.cols);
    for (int c = 0; c < lane.cols; ++c) {
        out(0, c) = sample(lane[0], lane.cols, c + static_cast<double>(move_mm(0, c)) / px_mm);
    }
    return out;
}

/// From the path to one side; `step` is 1 or -1.
void follow_side(const cv::Mat1f& soft, const cv::Mat1f& solid, double px_mm, double lane_mm, const FollowRound& round,
                 int step, cv::Mat1f& moves) {
    LanesBefore before(soft, solid, std::max(1.0, round.memory / lane_mm));
    cv::Mat1f known = cv::Mat1f::zeros(1, soft.cols);
    for (int lane = soft.rows / 2 + step; lane >= 0 && lane < soft.rows; lane += step) {
        const cv::Mat1f reference = before.mean();
        cv::Mat1f like;
        for (int pass = 0; pass < refits; ++pass) {
            const cv::Mat1f seen = moved(soft.row(lane), known, px_mm);
            like = likeness(seen, reference, like_mm / px_mm);
            known += further(seen, moved(solid.row(lane), known, px_mm), reference, px_mm, round.window_s).mul(like);
        }
        before.add(moved(soft.row(lane), known, px_mm), moved(solid.row(lane), known, px_mm).mul(like));
        known.copyTo(moves.row(lane));
    }
}

/// The moves at the path, by a quadratic through those of the lanes around: all lanes were laid onto the few next to
/// the path, whose own noise would else move every ring.
cv::Mat1f at_path(const cv::Mat1f& moves, double lane_mm) {
    const int centre = moves.rows / 2;
    const int half = std::min(centre, static_cast<int>(around_path_mm / lane_mm));
    double squares = 0.0;
    double fourths = 0.0;
    for (int k = -half; k <= half; ++k) {
        squares += k * k;
        fourths += std::pow(k, 4);
    }
    const double determinant = (2 * half + 1) * fourths - squares * squares;
    cv::Mat1f out = cv::Mat1f::zeros(1, moves.cols);
    for (int k = -half; k <= half && determinant > 0.0; ++k) {
        out += (fourths - squares * k * k) / determinant * moves.row(centre + k);
    }
    return out;
}

} // namespace

cv::Mat1f follow_rings(const cv::Mat1f& soft, const cv::Mat1f& solid, double px_mm, double lane_mm,
                       const FollowRound& round) {
    cv::Mat1f moves = cv::Mat1f::zeros(soft.size());
    cv::parallel_for_(cv::Range(0, 2), [&](const cv::Range& sides) {
        for (int side = sides.start; side < sides.end; ++side) {
            follow_side(soft, solid, px_mm, lane_mm, round, side == 0 ? 1 : -1, moves);
        }
    });
    moves = smooth(moves, alike_lanes_mm / lane_mm, 0.5 * round.window_s / px_mm);
    const cv::Mat1f path = at_path(moves, lane_mm);
    for (int lane = 0; lane < moves.rows; ++lane) {
        moves.row(lane) -= path;
    }
    return moves;
}

} // namespace pithward::boundary
