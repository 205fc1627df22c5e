#include "tests/support/random_ruler.h"

#include "tests/support/raw_image.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <random>

namespace pithward::test {

RandomRuler random_ruler(std::uint64_t seed, double most_dpi) {
    std::mt19937_64 random(seed);
    const auto uniform = [&](double low, double high) { return std::uniform_real_distribution(low, high)(random); };
    const auto chance = [&](double p) { return uniform(0.0, 1.0) < p; };
    const auto whole = [&](int low, int high) { return std::uniform_int_distribution(low, high)(random); };

    RandomRuler ruler;
    RulerLook& look = ruler.look;
    constexpr std::array dpis{600.0, 1200.0, 2400.0, 4800.0};
    ruler.dpi = std::min(most_dpi, dpis[static_cast<std::size_t>(whole(0, 3))]);
    look.px_per_mm_x = ruler.dpi / 25.4 * uniform(0.97, 1.03);
    look.px_per_mm_y = look.px_per_mm_x * uniform(0.99, 1.01);
    look.tilt_deg = uniform(-4.0, 4.0) + (chance(0.3) ? 90.0 : 0.0);
    const auto lengths = [&](double shortest, std::initializer_list<double> steps) {
        look.lengths_mm = {shortest};
        for (const double step : steps) {
            look.lengths_mm.push_back(look.lengths_mm.back() + step * uniform(0.8, 1.2));
        }
    };
    switch (whole(0, 2)) {
    case 0:
        ruler.graduation = Graduation::Millimetre;
        look.spacing_mm = 1.0;
        look.longer_each = {5, 10};
        lengths(uniform(1.6, 2.6), {0.9, 0.9});
        break;
    case 1:
        ruler.graduation = Graduation::HalfMillimetre;
        look.spacing_mm = 0.5;
        look.longer_each = {2, 10, 20};
        lengths(uniform(1.0, 1.6), {0.8, 0.7, 0.7});
        break;
    default:
        ruler.graduation = Graduation::SixteenthInch;
        look.spacing_mm = 25.4 / 16.0;
        look.longer_each = {2, 4, 8, 16};
        lengths(uniform(1.5, 2.5), {0.9, 0.9, 0.9, 0.9});
        break;
    }
    look.first_number = whole(0, 40);
    const double longest_mm = ruler.dpi > 3000.0 ? 35.0 : ruler.dpi > 2000.0 ? 60.0 : 110.0;
    look.marks = whole(static_cast<int>(15.0 / look.spacing_mm), static_cast<int>(longest_mm / look.spacing_mm));
    look.stroke_mm = uniform(0.07, 0.18);
    look.placing_mm = uniform(0.0, 0.008);
    look.missing = chance(0.5) ? 0.0 : uniform(0.0, 0.12);
    look.worn = chance(0.3) ? 0.0 : uniform(0.0, 0.25);
    look.doubled = chance(0.5) ? 0.0 : uniform(0.0, 0.06);
    look.numerals = chance(0.8);
    look.base = uniform(150.0, 230.0);
    look.ink = look.base - uniform(40.0, look.base - 20.0);
    if (chance(0.25)) {
        std::swap(look.base, look.ink);
    }
    look.brushed = uniform(0.0, 3.0);
    look.blur_px = uniform(0.4, 0.9) + 0.25 * ruler.dpi / 1200.0;
    look.noise = uniform(0.5, 5.0);
    look.uneven_light = uniform(0.0, 0.2);
    look.wander_px = chance(0.5) ? 0.0 : uniform(0.0, 0.3);
    look.seed = random();
    ruler.jpeg_quality = chance(0.4) ? whole(70, 95) : 0;
    ruler.aside_mm = 0.3 * look.lengths_mm.front() * uniform(-1.0, 1.0);
    ruler.aside_to_mm = 0.3 * look.lengths_mm.front() * uniform(-1.0, 1.0);
    return ruler;
}

RulerScan scanned(const TemporaryFolder& folder, const RandomRuler& ruler) {
    const RenderedRuler rendered = rendered_ruler(ruler.look);
    Written how{.kind = Written::Kind::TiffStrips, .dpi_x = ruler.dpi, .dpi_y = ruler.dpi};
    if (ruler.jpeg_quality > 0) {
        how.kind = Written::Kind::Jpeg;
        how.quality = ruler.jpeg_quality;
    }
    const std::string file = folder.file("ruler " + std::to_string(ruler.look.seed));
    write_raw(file, rendered.pixels, how);
    const RulerLine straight{rendered.from, rendered.to};
    const ImagePoint aside = straight.across() * ruler.look.px_per_mm_x;
    return {ScanFile::open(file).value(),
            {straight.from + aside * ruler.aside_mm, straight.to + aside * ruler.aside_to_mm}};
}

} // namespace pithward::test
