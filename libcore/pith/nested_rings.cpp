#include "libcore/pith/nested_rings.h"

#include <Eigen/Eigenvalues>

#include <algorithm>
#include <array>
#include <cmath>

namespace pithward::pith {

namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::Vector2d;

/// Standard deviations of the form's harmonics, relative to the radius. Assumed: sections oval by some per cent, slight
/// lobes ...
constexpr std::array form_sd{1.0, 0.03, 0.01, 0.005};

/// ... and growth a little eccentric in most stems, very much in few.
struct Eccentric {
    double sd;
    double share;
};
constexpr std::array eccentric{Eccentric{0.05, 0.4}, Eccentric{0.15, 0.4}, Eccentric{0.4, 0.2}};

constexpr double any_radius_mm = 30.0;  ///< Deviation of a ring's place on the path: any.
constexpr double steepest_cosine = 0.1; ///< Of a boundary against the path.

constexpr Index forms = static_cast<Index>(2 * form_sd.size());
/// Column 0: how far each point lies outside its ring's crossing, measured along the path. Then what each harmonic of
/// the form would move it by.
using Columns = Eigen::Matrix<double, Eigen::Dynamic, 1 + forms>;
using Gram = Eigen::Matrix<double, 1 + forms, 1 + forms>;

double square(double x) {
    return x * x;
}

/// Log of a sum of numbers given by their logs.
template <typename Logs>
double log_sum(const Logs& logs) {
    const double top = *std::ranges::max_element(logs);
    double sum = 0.0;
    for (const double value : logs) {
        sum += std::exp(value - top);
    }
    return top + std::log(sum);
}

/// The harmonics integrated over: what is left of the log likelihood but for the determinant of the covariance.
double over_all_forms(const Gram& gram) {
    std::array<double, eccentric.size()> logs{};
    for (std::size_t k = 0; k < eccentric.size(); ++k) {
        Eigen::Vector<double, forms> scale = Eigen::Vector<double, forms>::Ones();
        scale.head<2>().setConstant(eccentric[k].sd);
        Eigen::Matrix<double, forms, forms> normal =
            scale.asDiagonal() * gram.bottomRightCorner<forms, forms>() * scale.asDiagonal();
        normal.diagonal().array() += 1.0;
        const Eigen::LLT<Eigen::Matrix<double, forms, forms>> form(normal);
        const Eigen::Vector<double, forms> pull = scale.asDiagonal() * gram.col(0).tail<forms>();
        const double misfit = gram(0, 0) - pull.dot(form.solve(pull));
        logs[k] = std::log(eccentric[k].share) - 0.5 * misfit - form.matrixLLT().diagonal().array().log().sum();
    }
    return log_sum(logs);
}

} // namespace

NestedRings::NestedRings(std::span<const Arc> arcs, std::span<const Swells> swells) {
    std::vector<double> variance;
    for (std::size_t k = 0; k < arcs.size(); ++k) {
        crossings_.push_back(arcs[k].at);
        for (std::size_t i = 0; i < arcs[k].points.size(); ++i) {
            points_.push_back({k, arcs[k].points[i]});
            variance.push_back(arcs[k].variance[i]);
        }
    }
    const auto n = static_cast<Index>(points_.size());
    MatrixXd noise(n, n); // and each ring's free place
    for (Index i = 0; i < n; ++i) {
        for (Index j = 0; j < n; ++j) {
            const bool same = points_[static_cast<std::size_t>(i)].arc == points_[static_cast<std::size_t>(j)].arc;
            noise(i, j) = (same ? square(any_radius_mm) : 0.0) + (i == j ? variance[static_cast<std::size_t>(i)] : 0.0);
        }
    }
    const Eigen::LLT<MatrixXd> factor(noise);
    const double noise_log_determinant = 2.0 * factor.matrixLLT().diagonal().array().log().sum();
    for (std::size_t k = 0; k < swells.size(); ++k) {
        const auto alike = std::ranges::find_if(courses_, [&](const Course& course) {
            return course.breadth_mm == swells[k].breadth_mm && course.lasting == swells[k].lasting;
        });
        Course& course = alike != courses_.end() ? *alike : courses_.emplace_back(course_of(swells[k], arcs, factor));
        const double variance_of_height = square(swells[k].height_mm);
        course.models.push_back({k, (1.0 + variance_of_height * course.powers).inverse(),
                                 noise_log_determinant + (1.0 + variance_of_height * course.powers).log().sum()});
    }
    models_ = swells.size();
}

NestedRings::Course NestedRings::course_of(const Swells& swells, std::span<const Arc> arcs,
                                           const Eigen::LLT<MatrixXd>& noise) const {
    const auto n = static_cast<Index>(points_.size());
    MatrixXd alike(n, n);
    for (Index i = 0; i < n; ++i) {
        const Point& p = points_[static_cast<std::size_t>(i)];
        for (Index j = 0; j <= i; ++j) {
            const Point& q = points_[static_cast<std::size_t>(j)];
            const double rings = std::abs(arcs[p.arc].ring - arcs[q.arc].ring);
            const double along = square((p.at.y() - q.at.y()) / swells.breadth_mm);
            alike(i, j) = alike(j, i) = std::exp(-rings / swells.lasting) / (1.0 + 0.5 * along);
        }
    }
    noise.matrixL().solveInPlace(alike);
    MatrixXd turned = alike.transpose();
    noise.matrixL().solveInPlace(turned);
    const Eigen::SelfAdjointEigenSolver<MatrixXd> axes(turned);
    Course course;
    course.breadth_mm = swells.breadth_mm;
    course.lasting = swells.lasting;
    course.powers = axes.eigenvalues().array().max(0.0);
    course.whitener = noise.matrixU().solve(axes.eigenvectors()).transpose();
    return course;
}

void NestedRings::log_likelihoods(const Vector2d& pith, std::vector<double>& logs) const {
    Columns columns(static_cast<Index>(points_.size()), 1 + forms);
    // Directions are counted from that of the innermost crossing.
    const Vector2d reference = crossings_.front() - pith;
    const auto harmonics_of = [&](const Vector2d& here) {
        const double angle = std::atan2(reference.x() * here.y() - reference.y() * here.x(), reference.dot(here));
        Eigen::Vector<double, forms> harmonics;
        for (std::size_t m = 0; m < form_sd.size(); ++m) {
            const double turns = static_cast<double>(m + 1) * angle;
            harmonics(static_cast<Index>(2 * m)) = form_sd[m] * std::cos(turns);
            harmonics(static_cast<Index>(2 * m + 1)) = form_sd[m] * std::sin(turns);
        }
        return harmonics;
    };
    std::size_t arc = points_.size();
    Eigen::Vector<double, forms> at_crossing = Eigen::Vector<double, forms>::Zero();
    double radius = 1.0;
    double cosine = 1.0;
    for (Index i = 0; i < columns.rows(); ++i) {
        const Point& point = points_[static_cast<std::size_t>(i)];
        if (point.arc != arc) {
            arc = point.arc;
            const Vector2d out = crossings_[arc] - pith;
            radius = std::max(out.norm(), 1e-3);
            cosine = std::max(-out.x() / radius, steepest_cosine);
            at_crossing = harmonics_of(out);
        }
        const Vector2d here = point.at - pith;
        columns(i, 0) = (here.norm() - radius) / cosine;
        columns.row(i).tail<forms>() = (radius / cosine) * (harmonics_of(here) - at_crossing).transpose();
    }
    logs.assign(models_, 0.0);
    for (const Course& course : courses_) {
        const Columns whitened = course.whitener * columns;
        for (const Model& model : course.models) {
            const Gram gram = whitened.transpose() * model.shrink.matrix().asDiagonal() * whitened;
            logs[model.place] = over_all_forms(gram) - 0.5 * model.log_determinant;
        }
    }
}

} // namespace pithward::pith
