#pragma once

#include "demo-scans/maker/core_model.h"

namespace pithward::demo {

/// What of a core is seen at one pixel.
struct Seen {
    Colour colour;
    float cover = 0.0F;   ///< Share of the pixel that is wood or bark; the mount is seen through the rest.
    double beside_mm = 0; ///< How far outside the core's outline the pixel lies: for the shadow that the core throws.
};

/// Looks at a core pixel by pixel. It remembers the last ring that it met: use one for each thread, and go along rows.
class WoodShader {
public:
    explicit WoodShader(const CoreModel& core)
        : core_(core)
        , look_(look_of(core.scene.timber))
        , px_mm_(25.4 / core.scene.dpi) {}
    [[nodiscard]] Seen at(ImagePoint p);

private:
    struct Place {
        CoreModel::InWood wood;
        double radius = 0.0;
        double angle = 0.0;
        RingField::Direction direction;
        int ring = 0; ///< Ring that the pixel's centre lies in; count + 1 outside the last boundary.
    };
    [[nodiscard]] Place locate(ImagePoint p);
    [[nodiscard]] Colour rings_at(const Place& place) const;
    [[nodiscard]] Colour ring_colour(const Place& place, int ring, double inner, double outer, double radius) const;

    const CoreModel& core_;
    const TimberLook& look_;
    double px_mm_;
    int ring_ = 1;
};

} // namespace pithward::demo
