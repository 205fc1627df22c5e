#pragma once

#include "libcore/pith/arcs.h"

#include <Eigen/Cholesky>
#include <Eigen/Core>

#include <span>
#include <vector>

namespace pithward::pith {

/// How far and how smoothly rings stray from the form that the whole stem has: swells and hollows.
struct Swells {
    double height_mm = 0.02; ///< Standard deviation of a boundary's place along the path.
    double breadth_mm = 3.0; ///< Along the ring.
    double lasting = 4.0;    ///< Rings until a swell has faded to 1/e.
};

/// A model of nested rings about a pith, and how likely the arcs of a core are under it.
///
/// Ring k lies at r_k (1 + sum over m of a_m cos(m f) + b_m sin(m f)) from the pith in direction f, plus swells, plus
/// the tracing's own noise. r_k is free for each ring. m = 1 is eccentric growth, m = 2 an oval stem, m = 3 and 4
/// lobes; the same for all rings, with deviations known beforehand (three for m = 1, since few stems are very
/// eccentric). Swells are a Gaussian process over the place along the ring (rational quadratic) and the ring's number
/// (exponential). All of them but the pith are integrated over in closed form (Rasmussen and Williams 2006, Gaussian
/// Processes for Machine Learning, section 2.7, from memory).
class NestedRings {
public:
    /// One model for each of the swells.
    NestedRings(std::span<const Arc> arcs, std::span<const Swells> swells);

    /// Logarithm of the likelihood of the arcs with the pith here, for each of the swells, up to a constant that they
    /// share.
    void log_likelihoods(const Eigen::Vector2d& pith, std::vector<double>& logs) const;

private:
    struct Point {
        std::size_t arc = 0;
        Eigen::Vector2d at = Eigen::Vector2d::Zero();
    };
    /// Swells of one height.
    struct Model {
        std::size_t place = 0;        ///< Among the swells given.
        Eigen::ArrayXd shrink;        ///< What is left of the weight of each axis.
        double log_determinant = 0.0; ///< Of the covariance of places along the path.
    };
    /// Swells of one breadth and lasting. Their covariance and that of the noise have the same axes once the noise is
    /// white, so one product serves all heights.
    struct Course {
        double breadth_mm = 0.0;
        double lasting = 0.0;
        Eigen::MatrixXd whitener; ///< Makes the noise white and turns it to the axes.
        Eigen::ArrayXd powers;    ///< Variance along each axis at a height of 1 mm, in noises.
        std::vector<Model> models;
    };
    [[nodiscard]] Course course_of(const Swells& swells, std::span<const Arc> arcs,
                                   const Eigen::LLT<Eigen::MatrixXd>& noise) const;

    std::vector<Eigen::Vector2d> crossings_; ///< Of each arc with the path.
    std::vector<Point> points_;
    std::vector<Course> courses_;
    std::size_t models_ = 0;
};

} // namespace pithward::pith
