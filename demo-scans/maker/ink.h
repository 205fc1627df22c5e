#pragma once

#include "demo-scans/maker/colour.h"
#include "libcore/specimen/units.h"

#include <cstdint>
#include <string_view>
#include <vector>

namespace pithward::demo {

/// A block of columns of the picture, all rows, in float colours.
struct Block {
    int x = 0; ///< Column of the picture that the block starts with.
    int width = 0;
    int height = 0;
    std::vector<Colour> pixels;
    [[nodiscard]] Colour& at(int column, int row) {
        return pixels[static_cast<std::size_t>(row) * static_cast<std::size_t>(width) +
                      static_cast<std::size_t>(column)];
    }
};

/// A line on the surface: a scratch, a hair, a pencil stroke. Of one point: a speck.
struct Stroke {
    std::vector<ImagePoint> points;
    double half_width_px = 1.0;
    Colour colour;
    double opacity = 1.0;
    double grain = 0.0;  ///< Share of the opacity that comes and goes with the paper's or wood's grain.
    bool factor = false; ///< The colour is a factor on what lies below.
};

void draw(Block& block, const Stroke& stroke, std::uint64_t seed);

/// Strokes that write capitals, digits, '-' and ' ' with letters of that height, from a place on, along an angle.
[[nodiscard]] std::vector<std::vector<ImagePoint>> lettering(std::string_view text, ImagePoint from, double height_px,
                                                             double angle_deg, std::uint64_t seed);

} // namespace pithward::demo
