#include "libimaging/boundary/bark_or_wood.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

namespace pithward::boundary {
namespace {

constexpr double look_mm = 0.02;
constexpr int bark_ends = 150; // 3 mm of bark

/// Bark as dark as latewood but of another hue, then wood whose rings are 0.6 mm wide; both a little uneven.
std::vector<ColumnLook> bark_then_wood() {
    std::vector<ColumnLook> looks(500);
    for (int c = 0; c < 500; ++c) {
        ColumnLook& look = looks[static_cast<std::size_t>(c)];
        const double uneven = 0.004 * std::sin(1.7 * c);
        if (c < bark_ends) {
            look.tone = -0.9 + 0.1 * std::sin(0.9 * c);
            look.red = 0.34 + uneven;
            look.blue = -0.36 + uneven;
        } else {
            look.tone =
                -0.95 + 0.6 * std::fmod((c - bark_ends) * look_mm / 0.6, 1.0); // latewood outside, lighter inward
            look.red = 0.2 - 0.28 * (look.tone + 0.4) + uneven;
            look.blue = -0.32 + 0.25 * (look.tone + 0.4) - uneven;
        }
    }
    return looks;
}

TEST(BarkOrWood, TellsBarkFromLatewoodOfTheSameTone) {
    const auto looks = bark_then_wood();
    for (const int roughly : {bark_ends - 8, bark_ends, bark_ends + 8}) {
        const auto material = BarkOrWood::learnt(looks, roughly, look_mm);
        ASSERT_TRUE(material.has_value());
        for (int c = bark_ends - 60; c < bark_ends; ++c) {
            EXPECT_GT(material->evidence_for_bark(looks[static_cast<std::size_t>(c)]), 0.0) << c;
        }
        for (int c = bark_ends; c < bark_ends + 60; ++c) {
            EXPECT_LT(material->evidence_for_bark(looks[static_cast<std::size_t>(c)]), 0.0) << c;
        }
    }
}

TEST(BarkOrWood, LearnsNothingWhereThereIsNoBark) {
    const auto looks = bark_then_wood();
    EXPECT_FALSE(BarkOrWood::learnt(looks, 12, look_mm).has_value());
    EXPECT_FALSE(BarkOrWood::learnt(looks, static_cast<int>(looks.size()) - 5, look_mm).has_value());
}

} // namespace
} // namespace pithward::boundary
