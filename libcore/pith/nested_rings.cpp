#include "libcore/pith/nested_rings.h"

#include <Eigen/Eigenvalues>

#include <algorithm>
#include <array>
#include <cmath>
#include <complex>

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

/// Products of the columns in pairs, row by row: one table serves the weighted sums of all heights of swells.
constexpr Index pairs = (1 + forms) * (2 + forms) / 2;
using Products = Eigen::Matrix<double, Eigen::Dynamic, pairs>;

Products products_of(const Columns& columns) {
    Products products(columns.rows(), pairs);
    for (Index a = 0, k = 0; a <= forms; ++a) {
        for (Index b = 0; b <= a; ++b, ++k) {
            products.col(k) = columns.col(a).cwiseProduct(columns.col(b));
        }
    }
    return products;
}

Gram gram_of(const Eigen::RowVector<double, pairs>& sums) {
    Gram gram;
    for (Index a = 0, k = 0; a <= forms; ++a) {
        for (Index b = 0; b <= a; ++b, ++k) {
            gram(a, b) = gram(b, a) = sums(k);
        }
    }
    return gram;
}

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

/// The harmonics integrated over: what is left of the log likelihood but for the determinant of the covariance. Those
/// that are known alike for all stems go first; what remains is the misfit and the two of eccentric growth.
double over_all_forms(const Gram& gram) {
    constexpr Index other = forms - 2;
    Eigen::Matrix<double, other, other> normal = gram.bottomRightCorner<other, other>();
    normal.diagonal().array() += 1.0;
    const Eigen::LLT<Eigen::Matrix<double, other, other>> form(normal);
    const auto across = gram.bottomLeftCorner<other, 3>();
    const Eigen::Matrix<double, other, 3> half = form.matrixL().solve(across);
    const Eigen::Matrix3d left = gram.topLeftCorner<3, 3>() - half.transpose() * half;
    const double log_root = std::log(form.matrixLLT().diagonal().prod());
    std::array<double, eccentric.size()> logs{};
    for (std::size_t k = 0; k < eccentric.size(); ++k) {
        const double variance = square(eccentric[k].sd);
        const Eigen::Matrix2d bend = Eigen::Matrix2d::Identity() + variance * left.bottomRightCorner<2, 2>();
        const Vector2d pull = left.bottomLeftCorner<2, 1>();
        const double misfit = left(0, 0) - variance * pull.dot(bend.inverse() * pull);
        logs[k] = std::log(eccentric[k].share) - 0.5 * misfit - log_root - 0.5 * std::log(bend.determinant());
    }
    return log_sum(logs);
}

/// The harmonics of a direction, counted from a reference, times their deviations: by powers of the complex number
/// which turns the one into the other.
Eigen::RowVector<double, forms> harmonics_of(const Vector2d& here, const Vector2d& reference) {
    const std::complex<double> turn(reference.dot(here), reference.x() * here.y() - reference.y() * here.x());
    const std::complex<double> once = turn / std::max(std::abs(turn), 1e-12);
    Eigen::RowVector<double, forms> harmonics;
    std::complex<double> power = once;
    for (std::size_t m = 0; m < form_sd.size(); ++m, power *= once) {
        harmonics(static_cast<Index>(2 * m)) = form_sd[m] * power.real();
        harmonics(static_cast<Index>(2 * m + 1)) = form_sd[m] * power.imag();
    }
    return harmonics;
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
    std::size_t arc = points_.size();
    Eigen::RowVector<double, forms> at_crossing = Eigen::RowVector<double, forms>::Zero();
    double radius = 1.0;
    double cosine = 1.0;
    for (Index i = 0; i < columns.rows(); ++i) {
        const Point& point = points_[static_cast<std::size_t>(i)];
        if (point.arc != arc) {
            arc = point.arc;
            const Vector2d out = crossings_[arc] - pith;
            radius = std::max(out.norm(), 1e-3);
            cosine = std::max(-out.x() / radius, steepest_cosine);
            at_crossing = harmonics_of(out, reference);
        }
        const Vector2d here = point.at - pith;
        columns(i, 0) = (here.norm() - radius) / cosine;
        columns.row(i).tail<forms>() = (radius / cosine) * (harmonics_of(here, reference) - at_crossing);
    }
    logs.assign(models_, 0.0);
    for (const Course& course : courses_) {
        const Products products = products_of(course.whitener * columns);
        for (const Model& model : course.models) {
            const Eigen::RowVector<double, pairs> sums = model.shrink.matrix().transpose() * products;
            logs[model.place] = over_all_forms(gram_of(sums)) - 0.5 * model.log_determinant;
        }
    }
}

} // namespace pithward::pith
