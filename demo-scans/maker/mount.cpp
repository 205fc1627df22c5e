#include "demo-scans/maker/mount.h"

#include "demo-scans/maker/noise.h"

#include <algorithm>
#include <cmath>

namespace pithward::demo {

namespace {

Colour lid(const Board& board, ImagePoint at, double beyond_mm) {
    const Colour plain = board.mount.dark_lid ? Colour{24, 24, 26} : Colour{233, 233, 229};
    const double cloud =
        1.0 + 0.012 * noise(mix(board.seed, 1), at.x / board.px_per_mm / 9.0, at.y / board.px_per_mm / 9.0);
    const double shadow = board.mount.dark_lid ? 0.12 : 0.34;
    return scaled(plain, cloud * (1.0 - shadow * std::exp(-beyond_mm / 0.9)));
}

/// A planed lath, its grain along it: flat-sawn growth bands, fibres, small dark pores.
Colour lath(const Board& board, const Board::Place& at, bool dark) {
    const std::uint64_t seed = mix(board.seed, 2);
    const double wander = 0.9 * noise(seed, at.p / 38.0) + 0.25 * noise(seed + 1, at.p / 9.0, at.q / 4.0);
    const double place = (at.q + wander) / 1.7;
    const double saw = place - std::floor(place); // each band darkens slowly and ends sharply
    const double band = saw * saw * saw * smooth_step(1.0, 0.9, -saw) + saw * saw * (1.0 - smooth_step(0.93, 1.0, saw));
    const double fibre = noise(seed + 2, at.p / 5.0, at.q / 0.07) + 0.6 * noise(seed + 3, at.p / 1.5, at.q / 0.035);
    const double pore = smooth_step(0.74, 0.92, noise(seed + 4, at.p / 0.9, at.q / 0.045));
    const double cloud = noise(seed + 5, at.p / 14.0, at.q / 2.2);
    const Colour base = dark ? Colour{138, 97, 66} : Colour{219, 193, 152};
    const Colour deep = dark ? Colour{104, 68, 44} : Colour{190, 154, 108};
    Colour colour = blend(base, deep, std::clamp(0.55 * band + 0.12 * cloud, 0.0, 1.0));
    colour = scaled(colour, 1.0 + 0.018 * fibre);
    return blend(colour, deep * 0.72F, 0.35 * pore);
}

Colour groove(const Board& board, const Board::Place& at, const Board::Groove& groove, Colour wood) {
    const std::uint64_t seed = mix(board.seed, 3);
    const double u = std::clamp((at.q - groove.q) / groove.half_mm, -1.0, 1.0);
    // A round channel, lit from one side; dried glue in it.
    const double light = 0.60 - 0.20 * u - 0.16 * u * u + 0.03 * noise(seed, at.p / 1.2, at.q / 0.05);
    const Colour floor = scaled(wood, light) * Colour{1.04F, 0.92F, 0.78F};
    const double glue = smooth_step(0.3 - 0.5 * board.glue, 0.55, rough_noise(seed + 1, at.p / 2.4, at.q / 1.3));
    const double gloss = 0.5 + 0.5 * noise(seed + 2, at.p / 0.7, at.q / 0.35);
    return blend(floor, blend(Colour{128, 98, 60}, Colour{196, 176, 138}, gloss * gloss),
                 0.55 * glue * std::min(1.0, 2.0 * board.glue));
}

} // namespace

Board::Place Board::place(ImagePoint at) const {
    const double dx = (at.x - middle.x) / px_per_mm;
    const double dy = (at.y - middle.y) / px_per_mm;
    return {cosine * dx + sine * dy, cosine * dy - sine * dx};
}

Colour Board::colour(ImagePoint at) const {
    const Place here = place(at);
    const double beyond_side = std::abs(here.q) - half_width_mm - 0.03 * noise(mix(seed, 6), here.p / 6.0);
    const double beyond = std::max(beyond_side, std::abs(here.p) - half_length_mm);
    const double pixel = 1.0 / px_per_mm;
    if (beyond > pixel) {
        return lid(*this, at, beyond);
    }
    Colour wood;
    if (mount.kind == Mount::Kind::Card) {
        const double felt = 0.014 * noise(mix(seed, 4), here.p / 0.09, here.q / 0.09) +
                            0.01 * noise(mix(seed, 5), here.p / 2.0, here.q / 2.0);
        wood = scaled(Colour{206, 203, 195}, 1.0 + felt);
    } else {
        wood = lath(*this, here, mount.kind == Mount::Kind::DarkStick);
        for (const Groove& g : grooves) {
            const double ragged =
                0.05 * noise(mix(seed, here.q > g.q ? 7 : 8), here.p / 1.8) + 0.03 * noise(mix(seed, 9), here.p / 0.3);
            const double inside = g.half_mm + ragged - std::abs(here.q - g.q);
            wood = blend(wood, groove(*this, here, g, wood), std::clamp(0.5 + inside * px_per_mm, 0.0, 1.0));
        }
    }
    wood = scaled(wood, 1.0 - 0.16 * std::exp(beyond / 0.18)); // planed edge, a little rounded
    return blend(wood, lid(*this, at, std::max(beyond, 0.0)), std::clamp(0.5 + beyond * px_per_mm, 0.0, 1.0));
}

} // namespace pithward::demo
