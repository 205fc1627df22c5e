#include "demo-scans/maker/pores.h"

#include <algorithm>
#include <cmath>

namespace pithward::demo {

namespace {

constexpr double cell_mm = 0.2;

} // namespace

Pores::Pores(std::vector<Pore> pores, double half_width) {
    std::erase_if(pores, [&](const Pore& p) { return std::abs(p.at.b) > half_width + p.half_b; });
    pores_ = std::move(pores);
    if (pores_.empty()) {
        return;
    }
    const auto reach = [](const Pore& p) { return std::max(p.half_a, p.half_b) + p.soft_mm + 0.05; };
    double a_high = -1e9;
    double b_high = -1e9;
    a_low_ = 1e9;
    b_low_ = 1e9;
    for (const Pore& p : pores_) {
        a_low_ = std::min(a_low_, p.at.a - reach(p));
        b_low_ = std::min(b_low_, p.at.b - reach(p));
        a_high = std::max(a_high, p.at.a + reach(p));
        b_high = std::max(b_high, p.at.b + reach(p));
    }
    columns_ = static_cast<std::ptrdiff_t>((a_high - a_low_) / cell_mm) + 1;
    rows_ = static_cast<std::ptrdiff_t>((b_high - b_low_) / cell_mm) + 1;
    first_.assign(static_cast<std::size_t>(columns_ * rows_) + 1, 0);
    const auto each_cell = [&](const Pore& p, auto&& visit) {
        const double r = reach(p);
        const auto index = [](double offset) { return static_cast<std::ptrdiff_t>(offset / cell_mm); };
        for (std::ptrdiff_t row = index(p.at.b - r - b_low_); row <= index(p.at.b + r - b_low_); ++row) {
            for (std::ptrdiff_t column = index(p.at.a - r - a_low_); column <= index(p.at.a + r - a_low_); ++column) {
                visit(static_cast<std::size_t>(row * columns_ + column));
            }
        }
    };
    for (const Pore& p : pores_) {
        each_cell(p, [&](std::size_t c) { ++first_[c + 1]; });
    }
    for (std::size_t c = 1; c < first_.size(); ++c) {
        first_[c] += first_[c - 1];
    }
    list_.resize(first_.back());
    std::vector<std::uint32_t> next(first_.begin(), first_.end() - 1);
    for (std::size_t i = 0; i < pores_.size(); ++i) {
        each_cell(pores_[i], [&](std::size_t c) { list_[next[c]++] = static_cast<std::uint32_t>(i); });
    }
}

std::ptrdiff_t Pores::cell(double a, double b) const {
    const double column = (a - a_low_) / cell_mm;
    const double row = (b - b_low_) / cell_mm;
    if (column < 0.0 || row < 0.0 || column >= static_cast<double>(columns_) || row >= static_cast<double>(rows_)) {
        return -1;
    }
    return static_cast<std::ptrdiff_t>(row) * columns_ + static_cast<std::ptrdiff_t>(column);
}

Colour Pores::over(Colour tissue, CorePoint at, double pixel_mm) const {
    const std::ptrdiff_t c = pores_.empty() ? -1 : cell(at.a, at.b);
    if (c < 0) {
        return tissue;
    }
    Colour seen = tissue;
    for (std::uint32_t i = first_[static_cast<std::size_t>(c)]; i < first_[static_cast<std::size_t>(c) + 1]; ++i) {
        const Pore& p = pores_[list_[i]];
        const double da = (at.a - p.at.a) / p.half_a;
        const double db = (at.b - p.at.b) / p.half_b;
        const double far = std::sqrt(da * da + db * db);
        const double outside = (far - 1.0) * std::min(p.half_a, p.half_b);
        const double rim = pixel_mm + p.soft_mm;
        const double cover = std::clamp(0.5 - outside / rim, 0.0, 1.0);
        seen = blend(seen, p.colour, cover * p.opacity);
    }
    return seen;
}

} // namespace pithward::demo
