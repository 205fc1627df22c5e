#include "libimaging/boundary/agreeing_mix.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>

namespace pithward::boundary {

namespace {

constexpr double nearest_mm = 0.3;            ///< Lanes nearer than this may share a vessel.
constexpr double farthest_mm = 0.8;           ///< Lanes farther than this may not lie straight on each other.
constexpr double least_variance_share = 1e-6; ///< Keeps a mix of channels that are the same (a grey scan) finite.

/// Mean over lanes of the product of two channels, `lag` lanes apart.
double product(const cv::Mat1f& a, const cv::Mat1f& b, int lag) {
    const int pairs = a.rows - lag;
    return a.rowRange(0, pairs).dot(b.rowRange(lag, lag + pairs)) / pairs;
}

} // namespace

std::array<double, 3> agreeing_mix(const std::array<cv::Mat1f, 3>& flat, double lane_mm) {
    const int first = std::max(1, static_cast<int>(std::lround(nearest_mm / lane_mm)));
    const int last = std::min(flat[0].rows - 1, static_cast<int>(std::lround(farthest_mm / lane_mm)));
    Eigen::Matrix3d common = Eigen::Matrix3d::Zero();
    Eigen::Matrix3d all = Eigen::Matrix3d::Zero();
    for (Eigen::Index i = 0; i < 3; ++i) {
        for (Eigen::Index j = 0; j < 3; ++j) {
            const cv::Mat1f& a = flat[static_cast<std::size_t>(i)];
            const cv::Mat1f& b = flat[static_cast<std::size_t>(j)];
            for (int lag = first; lag <= last; ++lag) {
                common(i, j) += 0.5 * (product(a, b, lag) + product(b, a, lag));
            }
            all(i, j) = product(a, b, 0);
        }
    }
    all += (least_variance_share * all.trace() + 1e-12) * Eigen::Matrix3d::Identity();
    const Eigen::GeneralizedSelfAdjointEigenSolver<Eigen::Matrix3d> roots(common, all);
    const Eigen::Vector3d mix = roots.eigenvectors().col(2).normalized(); // Roots come in ascending order.
    return {mix(0), mix(1), mix(2)};
}

} // namespace pithward::boundary
