#include "demo-scans/maker/wood_shader.h"

#include "demo-scans/maker/noise.h"
#include "demo-scans/maker/tissue.h"

#include <algorithm>
#include <cmath>

namespace pithward::demo {

namespace {

// Half the breadth of the change from latewood to the next earlywood: a row of cells.
constexpr double row_of_cells_mm = 0.013;
// A pixel is looked at in eight places, no two in one row or column.
constexpr int looks = 8;
// So far beside the centre line's edge there is nothing of the core, even of a piece that lies askew.
constexpr double clear_of_core_mm = 2.5;
constexpr double look_x[looks] = {-0.4375, -0.3125, -0.1875, -0.0625, 0.0625, 0.1875, 0.3125, 0.4375};
constexpr double look_y[looks] = {-0.0625, 0.3125, -0.3125, 0.1875, -0.1875, 0.4375, -0.4375, 0.0625};

} // namespace

WoodShader::Place WoodShader::locate(ImagePoint p) {
    Place place{.wood = core_.in_wood(p), .direction = {}};
    const TreePoint tree = place.wood.tree;
    place.radius = std::max(std::hypot(tree.x, tree.y), 1e-3);
    place.angle = std::atan2(tree.y, tree.x);
    place.direction = core_.field.direction(place.angle);
    const int count = core_.field.count();
    int k = std::clamp(ring_, 1, count + 1);
    while (k <= count && core_.field.radius(k, place.direction) <= place.radius) {
        ++k;
    }
    while (k > 1 && core_.field.radius(k - 1, place.direction) > place.radius) {
        --k;
    }
    place.ring = ring_ = k;
    return place;
}

Colour WoodShader::ring_colour(const Place& place, int ring, double inner, double outer, double radius) const {
    const int count = core_.field.count();
    const auto own = [&](int k, double phase) {
        return k > count ? bark_colour(core_, place.wood.core, radius - inner)
                         : core_.rings[static_cast<std::size_t>(k - 1)].at(phase);
    };
    const double width = std::max(outer - inner, 1e-6);
    const double phase = ring > count ? 0.0 : (radius - inner) / width;
    const double edge = std::min(row_of_cells_mm, 0.3 * width);
    if (ring > 1 && radius - inner < edge) { // the fall from the ring inside, half done at the boundary
        return blend(core_.rings[static_cast<std::size_t>(ring - 2)].at(1.0), own(ring, phase),
                     smooth_step(-edge, edge, radius - inner));
    }
    if (ring <= count && outer - radius < edge) {
        return blend(own(ring, phase), own(ring + 1, 0.0), smooth_step(-edge, edge, radius - outer));
    }
    return own(ring, phase);
}

Colour WoodShader::rings_at(const Place& place) const {
    constexpr int reach = 3;
    const int count = core_.field.count();
    double radii[2 * reach + 1];
    double slopes[2 * reach + 1];
    for (int i = 0; i <= 2 * reach; ++i) {
        const int k = place.ring - reach + i;
        const int held = std::clamp(k, 0, count);
        radii[i] = k > count ? 1e9 : core_.field.radius(held, place.direction) + std::min(k, 0);
        slopes[i] = k > count ? 0.0 : core_.field.slope(held, place.direction);
    }
    const double jitter = file_jitter(core_, place.radius, place.angle);
    const TreePoint tree = place.wood.tree;
    const Vector x_axis = place.wood.along * -px_mm_; // mm of x a pixel, for a step to the right and down
    const Vector y_axis = place.wood.across * px_mm_;
    Colour sum;
    for (int look = 0; look < looks; ++look) {
        const double dx = x_axis.x * look_x[look] + x_axis.y * look_y[look];
        const double dy = y_axis.x * look_x[look] + y_axis.y * look_y[look];
        const double radius = place.radius + (tree.x * dx + tree.y * dy) / place.radius + jitter;
        const double turn = (tree.x * dy - tree.y * dx) / (place.radius * place.radius);
        const auto boundary = [&](int i) { return radii[i] + slopes[i] * turn; };
        int i = reach; // ring place.ring lies between boundaries i - 1 and i
        while (i < 2 * reach && boundary(i) <= radius) {
            ++i;
        }
        while (i > 1 && boundary(i - 1) > radius) {
            --i;
        }
        const int ring = std::clamp(place.ring - reach + i, 1, count + 1);
        sum += ring_colour(place, ring, boundary(i - 1), boundary(i), radius);
    }
    return sum * (1.0F / looks);
}

Seen WoodShader::at(ImagePoint p) {
    if (std::abs(core_.frame.to_strip(p).b) > 0.5 * core_.scene.core_width_mm + clear_of_core_mm) {
        Seen beside;
        beside.beside_mm = clear_of_core_mm;
        return beside;
    }
    const Place place = locate(p);
    const CorePoint core = place.wood.core;
    const Scene& scene = core_.scene;
    const std::uint64_t seed = mix(scene.seed, 70);
    const double per_px = 1.0 / px_mm_;

    // The outline: sides a little uneven, the bark's outside very much so.
    const double side_seed = core.b > 0.0 ? 3 : 4;
    const double uneven = 0.07 * noise(mix(seed, static_cast<std::uint64_t>(side_seed)), core.a / 2.5) +
                          0.025 * noise(mix(seed, static_cast<std::uint64_t>(side_seed) + 9), core.a / 0.25);
    double outside = std::abs(core.b) - 0.5 * scene.core_width_mm - (scene.texture > 0.0 ? uneven : 0.0);
    const double depth_in_bark = place.radius - core_.field.radius(core_.field.count(), place.direction);
    if (depth_in_bark > 0.0) {
        const double rough = scene.bark_mm * (1.0 + 0.22 * rough_noise(mix(seed, 5), core.b / 1.1, 0.0));
        outside = std::max(outside, depth_in_bark - rough);
    }
    outside = std::max(outside, core_.in_chunk(core));
    Seen seen;
    seen.cover = static_cast<float>(std::clamp(0.5 - outside * per_px, 0.0, 1.0) * place.wood.cover);
    seen.beside_mm = outside;
    if (seen.cover <= 0.0F) {
        return seen;
    }
    seen.colour = rings_at(place);
    if (depth_in_bark < 0.0) {
        seen.colour = tissue(core_, seen.colour, {core, place.radius, place.angle, place.ring, per_px});
    }
    return seen;
}

} // namespace pithward::demo
