#pragma once

#include "demo-scans/maker/scene.h"

#include <gtest/gtest.h>

namespace pithward::demo {

/// A short clear core: quick to render.
inline Scene short_core() {
    Scene scene;
    scene.growth.rings = 14;
    scene.growth.mean_mm = 0.8;
    scene.dpi = 1200.0;
    return scene;
}

inline Rendering rendered(const Scene& scene) {
    Outcome<Rendering> rendering = render(scene);
    EXPECT_TRUE(rendering.has_value()) << (rendering ? "" : rendering.error().line());
    return rendering ? *rendering : Rendering{};
}

} // namespace pithward::demo
