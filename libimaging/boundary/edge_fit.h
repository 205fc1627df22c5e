#pragma once

#include <optional>
#include <vector>

namespace pithward::boundary {

/// A dark zone behind a sharp edge, as a blurred profile shows it: light before the edge, dark behind, light again
/// after a softer change back.
struct EdgeFit {
    double column = 0.0;  ///< The sharp edge: where half of the change is done before blurring.
    double light = 0.0;   ///< Brightness before it.
    double depth = 0.0;   ///< How much darker it is behind it.
    double breadth = 0.0; ///< Columns from the edge to the middle of the change back.
    double soft = 1.0;    ///< Standard deviation of the change back, in columns; never under the blur.
};

/// Value of the model: light - depth * (Phi((c - column) / blur) - Phi((c - column - breadth) / soft)), Phi the normal
/// distribution function. The half-level of a blurred thin dark line lies too far on its light side; the fitted edge
/// does not.
[[nodiscard]] double blurred_edge(const EdgeFit& edge, double blur, double column);

/// Fits the model to `profile` (brightness, not its logarithm) between columns `from` and `to` by Levenberg-Marquardt
/// from `start`. Nothing when the fit leaves the neighbourhood of its start (2 blurs) or has no depth.
[[nodiscard]] std::optional<EdgeFit> fit_edge(const std::vector<float>& profile, int from, int to, double blur,
                                              const EdgeFit& start);

} // namespace pithward::boundary
