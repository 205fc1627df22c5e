#include "demo-scans/maker/noise.h"
#include "demo-scans/maker/pores.h"
#include "demo-scans/maker/timber.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pithward::demo {

namespace {

/// Where the boundaries cross lines along the core, as a table: to place thousands of pores quickly.
class Crossings {
public:
    Crossings(const RingField& field, double half_width, RingField::Side side)
        : field_(field)
        , sign_(side == RingField::Side::Near ? 1.0 : -1.0)
        , half_width_(half_width)
        , lines_(static_cast<int>(2.0 * half_width / spacing) + 2) {
        for (int line = 0; line < lines_; ++line) {
            for (int k = 0; k <= field.count(); ++k) {
                const double y = field.centre_y() - half_width + line * spacing;
                x_.push_back(sign_ * field.crossing_x(k, y, side).value_or(-sign_));
            }
        }
    }
    /// The place in ring k at that side and phase; nothing where the ring does not cross there.
    [[nodiscard]] std::optional<CorePoint> place(int k, double b, double phase) const {
        const double at = std::clamp((b + half_width_) / spacing, 0.0, lines_ - 1.001);
        const int line = static_cast<int>(at);
        const double t = at - line;
        const double in0 = x(line, k - 1);
        const double in1 = x(line + 1, k - 1);
        const double out0 = x(line, k);
        const double out1 = x(line + 1, k);
        if (std::min({in0, in1, out0, out1}) < 0.0) {
            return std::nullopt;
        }
        return CorePoint{field_.outer_x() - sign_ * blend(blend(in0, in1, t), blend(out0, out1, t), phase), b};
    }
    /// Width of ring k along the core at that side; 0 where it does not cross there.
    [[nodiscard]] double width(int k, double b) const {
        const auto inner = place(k, b, 0.0);
        const auto outer = place(k, b, 1.0);
        return inner && outer ? sign_ * (inner->a - outer->a) : 0.0;
    }

private:
    static constexpr double spacing = 0.12;
    [[nodiscard]] double x(int line, int k) const {
        return x_[static_cast<std::size_t>(line) * static_cast<std::size_t>(field_.count() + 1) +
                  static_cast<std::size_t>(k)];
    }
    const RingField& field_;
    double sign_; ///< Of x.
    double half_width_;
    int lines_;
    std::vector<double> x_;
};

struct Grower {
    const Scene& scene;
    const TimberLook& look;
    const RingField& field;
    Crossings crossings;
    double half_width;
    double outward; ///< Sign of a toward the bark.
    std::vector<Pore> pores;

    void resin_canals(int k, bool heartwood, Random& random) {
        const int count =
            static_cast<int>(look.canals_per_mm * 2.0 * half_width * random.uniform(0.3, 1.6) + random.uniform());
        for (int i = 0; i < count; ++i) {
            const double b = random.uniform(-half_width, half_width);
            const double phase = 1.0 - 0.6 * random.uniform() * random.uniform(0.15, 1.0);
            const double radius = random.uniform(0.045, 0.08);
            const double width = crossings.width(k, b);
            const auto at = crossings.place(k, b, phase);
            if (!at || width < 3.2 * radius || (1.0 - phase) * width < radius) {
                continue;
            }
            // Open and full of dust, or stained with resin.
            const bool pale = random.chance(heartwood ? 0.35 : 0.7);
            const Colour colour = pale ? Colour{238, 219, 186} : Colour{146, 92, 52};
            pores.push_back(
                {*at, radius * random.uniform(0.9, 1.25), radius * 0.9, colour, random.uniform(0.35, 0.75), 0.03});
        }
    }

    void first_vessels(int k, bool heartwood, Random& random) {
        // Rows of large vessels, the first one right inside the ring's start, each row smaller and less full.
        double from_start = 0.0;
        const double width = crossings.width(k, 0.0);
        const double rows = std::clamp(look.vessel_rows * (0.55 + 0.3 * width), 1.0, 3.2);
        for (int row = 0; row < static_cast<int>(std::ceil(rows)); ++row) {
            const double fill = std::min(1.0, rows - row);
            const double size = look.vessel_mm * (row == 0 ? 1.0 : row == 1 ? 0.78 : 0.58);
            double b = -half_width - random.uniform(0.0, size);
            double reach = 0.0;
            while (b < half_width) {
                const double diameter =
                    std::min(size * std::clamp(random.normal(1.0, 0.16), 0.5, 1.4), 0.85 * width + 0.05);
                const double room = diameter * random.uniform(1.02, row == 0 ? 1.5 : 1.9);
                const double at_b = b + 0.5 * room;
                const double here = crossings.width(k, at_b);
                const double depth = from_start + 0.5 * diameter + 0.012 + random.uniform(0.0, row == 0 ? 0.035 : 0.09);
                const auto at = here > 0.04 ? crossings.place(k, at_b, depth / here) : std::nullopt;
                if (at && depth < here + 0.3 * diameter && random.chance(fill * 0.96)) {
                    large_vessel(*at, diameter, heartwood, random);
                }
                reach = std::max(reach, diameter);
                b += room;
            }
            from_start += 0.82 * reach;
        }
    }

    void large_vessel(CorePoint at, double diameter, bool heartwood, Random& random) {
        const double lean = random.uniform(0.88, 1.12);
        const double half_a = 0.5 * diameter * lean;
        const double half_b = 0.5 * diameter / lean;
        // A thin pale sheath, then the hole: dark, full of sanding dust or chalk, or closed by tyloses in heartwood.
        pores.push_back({at, half_a + 0.014, half_b + 0.014, {206, 176, 134}, 0.5, 0.01});
        Colour hole = Colour{74, 52, 34} * static_cast<float>(random.uniform(0.75, 1.25));
        double opacity = random.uniform(0.82, 0.97);
        if (random.chance(scene.disturbances.chalk)) {
            hole = Colour{241, 237, 228} * static_cast<float>(random.uniform(0.93, 1.0));
        } else if (random.chance(heartwood ? 0.4 : 0.12)) {
            hole = heartwood ? Colour{150, 112, 74} : Colour{196, 166, 124};
            opacity = random.uniform(0.6, 0.9);
        }
        pores.push_back({at, half_a, half_b, hole, opacity, 0.006});
        if (random.chance(0.5)) { // light caught on the far wall
            pores.push_back({{at.a, at.b + 0.45 * half_b}, 0.6 * half_a, 0.35 * half_b, hole * 1.35F, 0.5, 0.03});
        }
    }

    void flames(int k, Random& random) {
        // Small vessels of the latewood stand in flames: pale patches that start narrow, widen and lean outward.
        const double width = crossings.width(k, 0.0);
        const double from = std::clamp(0.5 / std::max(width, 0.05), 0.35, 0.9);
        double b = -half_width;
        while (b < half_width) {
            const double lean = random.normal(0.0, 0.16);
            const double start = from + random.uniform(0.0, 0.12);
            const double step = 0.045 / std::max(width, 0.1);
            const int steps = static_cast<int>((0.97 - start) / step);
            for (int i = 0; i <= steps; ++i) {
                const double phase = start + i * step;
                const double spread = 0.04 + 0.11 * (phase - start) / (1.0 - from + 0.05);
                const double side = b + lean * (phase - start) * width + random.normal(0.0, spread);
                const auto at = crossings.place(k, side, phase + random.normal(0.0, 0.01));
                if (!at || crossings.width(k, side) < 0.35) {
                    continue;
                }
                const double radius = random.uniform(0.013, 0.026);
                pores.push_back({*at, 2.4 * radius, 2.0 * radius, {207, 172, 124}, 0.32, 0.04});
                if (random.chance(0.75)) {
                    pores.push_back({*at, radius, radius, {104, 74, 48}, 0.7, 0.008});
                }
            }
            b += random.uniform(0.28, 0.8);
        }
    }

    void scattered_vessels(int k, Random& random) {
        const double width = crossings.width(k, 0.0);
        const double amount = look.vessels_per_mm2 * width * 2.0 * half_width;
        const int clusters = static_cast<int>(amount / 1.45 + random.uniform());
        for (int i = 0; i < clusters; ++i) {
            const double b = random.uniform(-half_width, half_width);
            // Fewer and smaller toward the ring's end.
            const double phase =
                random.chance(0.75) ? random.uniform(0.01, 0.97) : 0.97 * random.uniform() * random.uniform();
            const double radius = 0.5 * look.vessel_mm * std::clamp(random.normal(1.0, 0.17), 0.5, 1.5) *
                                  blend(1.08, 0.72, phase * phase);
            const int members = random.chance(0.26) ? random.whole(2, 3) : 1;
            const auto at = crossings.place(k, b, phase);
            if (!at || (1.0 - phase) * crossings.width(k, b) < look.terminal_mm) {
                continue;
            }
            const Colour hole = random.chance(scene.disturbances.chalk)
                                    ? Colour{240, 234, 222}
                                    : blend(Colour{118, 82, 54}, look.late, scene.vessel_tint) *
                                          static_cast<float>(random.uniform(0.8, 1.25));
            for (int m = 0; m < members; ++m) { // radial multiples
                pores.push_back({{at->a + outward * 1.75 * radius * m, at->b},
                                 radius * 1.08,
                                 radius,
                                 hole,
                                 random.uniform(0.45, 0.75),
                                 0.006});
            }
        }
    }
};

/// The pores on one side of the pith.
std::vector<Pore> grow_side(const Scene& scene, const std::vector<PlannedRing>& plan, const RingField& field,
                            RingField::Side side) {
    const double half_width = 0.5 * scene.core_width_mm + 0.3;
    const bool near = side == RingField::Side::Near;
    Grower grower{scene,      look_of(scene.timber), field, Crossings(field, half_width, side),
                  half_width, near ? -1.0 : 1.0,     {}};
    for (int k = 1; k <= field.count(); ++k) {
        Random random(mix(scene.seed, near ? 50 : 51),
                      static_cast<std::uint64_t>(plan[static_cast<std::size_t>(k - 1)].year + 50'000));
        const bool heartwood = k < field.count() - scene.sapwood_rings;
        switch (wood_type(scene.timber)) {
        case WoodType::Conifer:
            grower.resin_canals(k, heartwood, random);
            break;
        case WoodType::RingPorous:
            grower.flames(k, random);
            grower.first_vessels(k, heartwood, random);
            break;
        case WoodType::DiffusePorous:
            grower.scattered_vessels(k, random);
            break;
        }
    }
    return std::move(grower.pores);
}

} // namespace

std::vector<Pore> grow_pores(const Scene& scene, const std::vector<PlannedRing>& plan, const RingField& field) {
    std::vector<Pore> pores = grow_side(scene, plan, field, RingField::Side::Near);
    if (scene.has_far_side()) {
        const std::vector<Pore> far = grow_side(scene, plan, field, RingField::Side::Far);
        pores.insert(pores.end(), far.begin(), far.end());
    }
    return pores;
}

} // namespace pithward::demo
