#include "demo-scans/maker/ink.h"

#include "demo-scans/maker/noise.h"

#include <algorithm>
#include <cmath>

namespace pithward::demo {

namespace {

double distance_to(const std::vector<ImagePoint>& line, double x, double y) {
    if (line.size() == 1) {
        return std::hypot(x - line[0].x, y - line[0].y);
    }
    double best = 1e18;
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        const ImagePoint d = line[i + 1] - line[i];
        const double length2 = std::max(d.x * d.x + d.y * d.y, 1e-12);
        const double t = std::clamp(((x - line[i].x) * d.x + (y - line[i].y) * d.y) / length2, 0.0, 1.0);
        const double dx = x - line[i].x - t * d.x;
        const double dy = y - line[i].y - t * d.y;
        best = std::min(best, dx * dx + dy * dy);
    }
    return std::sqrt(best);
}

void draw_part(Block& block, const Stroke& stroke, const std::vector<ImagePoint>& line, std::uint64_t seed) {
    const double reach = stroke.half_width_px + 1.0;
    double x_low = 1e18;
    double x_high = -1e18;
    double y_low = 1e18;
    double y_high = -1e18;
    for (const ImagePoint& p : line) {
        x_low = std::min(x_low, p.x - reach);
        x_high = std::max(x_high, p.x + reach);
        y_low = std::min(y_low, p.y - reach);
        y_high = std::max(y_high, p.y + reach);
    }
    const int from_x = std::max(static_cast<int>(std::floor(x_low)), block.x);
    const int to_x = std::min(static_cast<int>(std::ceil(x_high)), block.x + block.width - 1);
    const int from_y = std::max(static_cast<int>(std::floor(y_low)), 0);
    const int to_y = std::min(static_cast<int>(std::ceil(y_high)), block.height - 1);
    for (int y = from_y; y <= to_y; ++y) {
        for (int x = from_x; x <= to_x; ++x) {
            const double cover = std::clamp(0.5 + stroke.half_width_px - distance_to(line, x, y), 0.0, 1.0) *
                                 std::min(1.0, 2.0 * stroke.half_width_px);
            if (cover <= 0.0) {
                continue;
            }
            double opacity = stroke.opacity;
            if (stroke.grain > 0.0) {
                opacity *= 1.0 - stroke.grain * (0.5 + 0.5 * noise(seed, x / 1.6, y / 1.6));
            }
            Colour& below = block.at(x - block.x, y);
            below = blend(below, stroke.factor ? below * stroke.colour : stroke.colour, cover * opacity);
        }
    }
}

/// Letters on a grid of 5 by 7: pairs of digits are points, a space lifts the pencil.
std::string_view glyph(char c) {
    constexpr std::string_view digits[] = {"103041453616050110",   "1120 2026",      "01103041420646",
                                           "004022324345361605",   "3004 0444 3036", "400002324345361605",
                                           "40210305163645433203", "004016",         "10304132120110 1203051636454332",
                                           "433212011030414536"};
    constexpr std::string_view capitals[] = {"062046 1434",
                                             "00063645443303 33423000",
                                             "4130100105163645",
                                             "00062645412000",
                                             "40000646 0333",
                                             "400006 0333",
                                             "41301001051636454323",
                                             "0006 4046 0343",
                                             "2026",
                                             "30351606",
                                             "0006 4003 0346",
                                             "000646",
                                             "0600234046",
                                             "06004640",
                                             "103041453616050110",
                                             "06003041423303",
                                             "103041453616050110 3446",
                                             "06003041423303 2346",
                                             "4130100112324345361605",
                                             "0040 2026",
                                             "000516364540",
                                             "002640",
                                             "0016233640",
                                             "0046 4006",
                                             "0023 4023 2326",
                                             "00400646"};
    if (c >= '0' && c <= '9') {
        return digits[c - '0'];
    }
    if (c >= 'A' && c <= 'Z') {
        return capitals[c - 'A'];
    }
    return c == '-' ? std::string_view("0343") : std::string_view();
}

} // namespace

void draw(Block& block, const Stroke& stroke, std::uint64_t seed) {
    if (stroke.points.size() <= 8) {
        draw_part(block, stroke, stroke.points, seed);
        return;
    }
    for (std::size_t i = 0; i + 1 < stroke.points.size(); i += 7) { // long lines in parts, each with its own small box
        const auto from = stroke.points.begin() + static_cast<std::ptrdiff_t>(i);
        const auto to = stroke.points.begin() + static_cast<std::ptrdiff_t>(std::min(i + 8, stroke.points.size()));
        draw_part(block, stroke, {from, to}, seed);
    }
}

std::vector<std::vector<ImagePoint>> lettering(std::string_view text, ImagePoint from, double height_px,
                                               double angle_deg, std::uint64_t seed) {
    std::vector<std::vector<ImagePoint>> lines;
    const double unit_px = height_px / 6.0;
    const double c = std::cos(radians(angle_deg));
    const double s = std::sin(radians(angle_deg));
    Random random(seed, 5);
    double pen = 0.0;
    for (const char letter : text) {
        const double lean = random.normal(0.12, 0.04); // a hand, not a machine
        const double lift = random.normal(0.0, 0.2);
        std::vector<ImagePoint> line;
        const std::string_view strokes = glyph(letter);
        const auto flush = [&] {
            if (line.size() > 1) {
                lines.push_back(line);
            }
            line.clear();
        };
        for (std::size_t i = 0; i + 1 < strokes.size(); i += 2) {
            if (strokes[i] == ' ') {
                flush();
                ++i;
            }
            const double gx = strokes[i] - '0' + random.normal(0.0, 0.12);
            const double gy = strokes[i + 1] - '0' + random.normal(0.0, 0.12) + lift;
            const double x = (pen + gx - lean * (gy - 6.0)) * unit_px;
            const double y = gy * unit_px;
            line.push_back({from.x + c * x - s * y, from.y + s * x + c * y});
        }
        flush();
        pen += (letter == 'I' ? 4.6 : 5.8) + random.normal(0.0, 0.2);
    }
    return lines;
}

} // namespace pithward::demo
