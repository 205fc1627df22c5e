#pragma once

namespace pithward::dating {

/// The probability that Student's t with so many degrees of freedom is at least `t`: I(x; n/2, 1/2) / 2 with
/// x = n / (n + t^2), for a negative t one minus that of -t (Abramowitz and Stegun 1964, 26.7.1). Keeps its relative
/// accuracy far out. 1 with less than one degree of freedom.
[[nodiscard]] double student_tail(double t, double freedom);

/// t of a correlation from n pairs: r sqrt(n - 2) / sqrt(1 - r^2). Held to +-`greatest_t`, also for r = 1. 0 for n < 3.
[[nodiscard]] double t_of(double r, int n);
inline constexpr double greatest_t = 1e6;

/// The correlation from n pairs that chance exceeds with this probability.
[[nodiscard]] double correlation_at(double probability, int n);

/// The probability that the best of so many independent trials is one that alone has this probability:
/// 1 - (1 - p)^trials.
[[nodiscard]] double best_of(double probability, double trials);

} // namespace pithward::dating
