#include "demo-scans/maker/noise.h"
#include "demo-scans/maker/sheet.h"

#include <algorithm>
#include <cmath>

namespace pithward::demo {

namespace {

constexpr double edge_mm = 0.8; // from the board to the rule
constexpr double line_half_mm = 0.055;

} // namespace

double ruler_zero(const Sheet& sheet) {
    return 1.43 * sheet.px_per_mm + 0.37;
}

Colour ruler_colour(const Sheet& sheet, double x, double y) {
    const double down = (y - sheet.ruler_top) / sheet.px_per_mm - edge_mm;
    const double along = (x - ruler_zero(sheet)) / sheet.px_per_mm;
    const double per_px = sheet.px_per_mm;
    const Colour lid = sheet.board.mount.dark_lid ? Colour{24, 24, 26} : Colour{228, 228, 224};
    const double brushed = noise(mix(sheet.seed, 40), along / 9.0, down / 0.05) +
                           0.5 * noise(mix(sheet.seed, 41), along / 2.0, down / 0.03);
    const Colour steel = Colour{186, 188, 190} * static_cast<float>(1.0 + 0.02 * brushed);
    const double tick = std::round(2.0 * along) / 2.0;
    const auto half_steps = static_cast<long>(std::llround(2.0 * tick));
    const double length = half_steps % 20 == 0 ? 3.6 : half_steps % 10 == 0 ? 2.9 : half_steps % 2 == 0 ? 2.1 : 1.2;
    double ink = std::clamp(0.5 + (line_half_mm - std::abs(along - tick)) * per_px, 0.0, 1.0);
    ink *= std::clamp(0.5 + (length - down) * per_px, 0.0, 1.0);
    ink *= half_steps < 0 ? 0.0 : 1.0;
    const Colour rule = blend(steel, Colour{38, 38, 40}, 0.92 * ink);
    return blend(scaled(lid, 1.0 - 0.3 * std::exp(down / 0.3)), rule, std::clamp(0.5 + down * per_px, 0.0, 1.0));
}

std::vector<Stroke> ruler_numbers(const Sheet& sheet) {
    std::vector<Stroke> strokes;
    const double mm = sheet.px_per_mm;
    for (int centimetre = 0;; ++centimetre) {
        const double x = ruler_zero(sheet) + 10.0 * centimetre * mm;
        if (x > sheet.width) {
            break;
        }
        const ImagePoint from{x + 0.35 * mm, sheet.ruler_top + (edge_mm + 4.2) * mm};
        for (auto& line : lettering(std::to_string(centimetre), from, 1.8 * mm, 0.0, 7)) {
            strokes.push_back(
                {.points = std::move(line), .half_width_px = 0.1 * mm, .colour = {40, 40, 42}, .opacity = 0.9});
        }
    }
    return strokes;
}

} // namespace pithward::demo
