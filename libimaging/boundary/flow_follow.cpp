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
constexpr float other_wood = 0.2F;     ///< Correlation at which it is not of the same wood ...
constexpr float familiar = 0.6F;       ///< ... and at which it surely is.
constexpr int refits = 2;              ///< Least squares, repeated.
constexpr int next_to_path = 2;        ///< So many lanes on both sides of the path are the first to be laid onto.
constexpr double alike_lanes_mm = 0.2; ///< Neighbouring lanes move alike.
constexpr double piece_mm = 80.0;      ///< A strip is followed in pieces of this length, several at once, ...
constexpr double margin_windows = 2.5; ///< ... each seen with so many long windows beyond its ends.
constexpr double around_path_mm = 1.2; ///< The move at the path is taken from the lanes within this.

// The lanes on both sides of the path are followed at once, in matrices with a row for each side.
constexpr int sides = 2;

/// Running mean of the lanes before the present ones, laid straight. It begins with the lanes next to the path.
class LanesBefore {
public:
    LanesBefore(const cv::Mat1f& soft, const cv::Mat1f& solid, double memory)
        : share_(1.0 / memory) {
        const int centre = soft.rows / 2;
        const cv::Range next(std::max(0, centre - next_to_path), std::min(soft.rows, centre + next_to_path + 1));
        cv::Mat1f sum;
        cv::Mat1f mass;
        cv::reduce(soft.rowRange(next).mul(solid.rowRange(next)), sum, 0, cv::REDUCE_AVG);
        cv::reduce(solid.rowRange(next), mass, 0, cv::REDUCE_AVG);
        sum_ = cv::repeat(sum, sides, 1);
        mass_ = cv::repeat(mass, sides, 1);
    }

    void add(const cv::Mat1f& lanes, const cv::Mat1f& solid) {
        sum_ = (1.0 - share_) * sum_ + share_ * lanes.mul(solid);
        mass_ = (1.0 - share_) * mass_ + share_ * solid;
    }

    [[nodiscard]] cv::Mat1f mean() const { return sum_ / cv::max(mass_, 1e-3F); }

private:
    cv::Mat1f sum_;
    cv::Mat1f mass_;
    double share_;
};

cv::Mat1f one_below_the_other(const cv::Mat1f& upper, const cv::Mat1f& lower) {
    cv::Mat1f both;
    cv::vconcat(upper, lower, both);
    return both;
}

/// What lanes are laid onto, with what is the same in each pass.
struct Reference {
    cv::Mat1f level;
    cv::Mat1f gradient; ///< 1/mm.
    cv::Mat1f usual;    ///< Square of the gradient, evened out.
    cv::Mat1f power;    ///< Square of the level over the window of likeness.

    Reference(const cv::Mat1f& mean, double px_mm)
        : level(mean)
        , gradient(mean.size())
        , power(smooth(mean.mul(mean), 0.0, like_mm / px_mm)) {
        const int last = mean.cols - 1;
        for (int row = 0; row < mean.rows; ++row) {
            for (int c = 0; c <= last; ++c) {
                const int before = std::max(0, c - 1);
                const int after = std::min(last, c + 1);
                const auto span = static_cast<float>((after - before) * px_mm);
                gradient(row, c) = (mean(row, after) - mean(row, before)) / span;
            }
        }
        usual = smooth(gradient.mul(gradient), 0.0, even_mm / px_mm);
        for (int row = 0; row < mean.rows; ++row) {
            usual.row(row) += even_floor * cv::mean(usual.row(row))[0] + 1e-9;
        }
    }
};

/// How far the lanes have to be moved further (mm) to lie on the reference.
cv::Mat1f further(const cv::Mat1f& lanes, const cv::Mat1f& solid, const Reference& onto, double px_mm,
                  double window_mm) {
    const cv::Mat1f difference = lanes - onto.level;
    const cv::Mat1f spread = smooth(difference.mul(difference), 0.0, even_mm / px_mm);
    cv::Mat1f energy(lanes.size());
    cv::Mat1f product(lanes.size());
    for (int row = 0; row < lanes.rows; ++row) {
        for (int c = 0; c < lanes.cols; ++c) {
            const float most = cut_at * std::sqrt(std::max(0.0F, spread(row, c)));
            const float gradient = onto.gradient(row, c);
            const float weighted = gradient * solid(row, c) / onto.usual(row, c);
            energy(row, c) = gradient * weighted;
            product(row, c) = std::clamp(difference(row, c), -most, most) * weighted;
        }
    }
    const double window = window_mm / px_mm;
    const cv::Mat1f near = smooth(one_below_the_other(energy, product), 0.0, window);
    const cv::Mat1f over_window = near + from_afar * smooth(near, 0.0, afar_window * window);
    const cv::Mat1f move =
        -over_window.rowRange(lanes.rows, 2 * lanes.rows) / (over_window.rowRange(0, lanes.rows) + lane_inertia);
    return cv::max(cv::min(move, greatest_move), -greatest_move);
}

/// 0 to 1: how surely lanes show the wood of the reference, by their correlation over the window. A crack along the
/// path shows another.
cv::Mat1f likeness(const cv::Mat1f& lanes, const Reference& onto, double px_mm) {
    const cv::Mat1f products =
        smooth(one_below_the_other(lanes.mul(onto.level), lanes.mul(lanes)), 0.0, like_mm / px_mm);
    cv::Mat1f like(lanes.size());
    for (int row = 0; row < lanes.rows; ++row) {
        for (int c = 0; c < lanes.cols; ++c) {
            const float power = products(lanes.rows + row, c) * onto.power(row, c);
            const float r = products(row, c) / std::sqrt(std::max(0.0F, power) + 1e-9F);
            like(row, c) = std::clamp((r - other_wood) / (familiar - other_wood), 0.0F, 1.0F);
        }
    }
    return like;
}

/// Both sides' lanes so many from the path.
cv::Mat1f lanes_off(const cv::Mat1f& values, int off) {
    const int centre = values.rows / 2;
    return one_below_the_other(values.row(centre + off), values.row(centre - off));
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

/// The moves on one piece of a strip.
cv::Mat1f follow_piece(const cv::Mat1f& soft, const cv::Mat1f& solid, double px_mm, double lane_mm,
                       const FollowRound& round) {
    const int centre = soft.rows / 2;
    LanesBefore before(soft, solid, std::max(1.0, round.memory / lane_mm));
    cv::Mat1f moves = cv::Mat1f::zeros(soft.size());
    cv::Mat1f known = cv::Mat1f::zeros(sides, soft.cols);
    for (int off = 1; off <= centre && centre + off < soft.rows; ++off) {
        const cv::Mat1f lanes = lanes_off(soft, off);
        const cv::Mat1f wood = lanes_off(solid, off);
        const Reference onto(before.mean(), px_mm);
        cv::Mat1f like;
        for (int pass = 0; pass < refits; ++pass) {
            const cv::Mat1f seen = flatten(lanes, known, px_mm);
            like = likeness(seen, onto, px_mm);
            known += further(seen, flatten(wood, known, px_mm), onto, px_mm, round.window_s).mul(like);
        }
        before.add(flatten(lanes, known, px_mm), flatten(wood, known, px_mm).mul(like));
        known.row(0).copyTo(moves.row(centre + off));
        known.row(1).copyTo(moves.row(centre - off));
    }
    return moves;
}

} // namespace

cv::Mat1f follow_rings(const cv::Mat1f& soft, const cv::Mat1f& solid, double px_mm, double lane_mm,
                       const FollowRound& round) {
    const int piece = static_cast<int>(piece_mm / px_mm);
    const int margin = static_cast<int>(margin_windows * afar_window * round.window_s / px_mm);
    cv::Mat1f moves(soft.size());
    cv::parallel_for_(cv::Range(0, (soft.cols + piece - 1) / piece), [&](const cv::Range& part) {
        for (int k = part.start; k < part.end; ++k) {
            const cv::Range own(k * piece, std::min(soft.cols, (k + 1) * piece));
            const cv::Range seen(std::max(0, own.start - margin), std::min(soft.cols, own.end + margin));
            const cv::Mat1f found = follow_piece(soft.colRange(seen), solid.colRange(seen), px_mm, lane_mm, round);
            found.colRange(own.start - seen.start, own.end - seen.start).copyTo(moves.colRange(own));
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
