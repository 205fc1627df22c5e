// How right the program is on each kind of core, one of each strength of disturbance, rendered in place with a seed of
// their own. A small part of what accuracy_table measures: what must not be lost while the program is worked on.
#include "demo-scans/maker/graded.h"
#include "libcore/measure/measure.h"
#include "tests/accuracy/figures.h"
#include "tests/support/rendered_scan.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <ostream>

namespace pithward::accuracy {
namespace {

constexpr std::uint64_t graded_seed = 88002;
constexpr double usual_dpi = 1200.0;

/// What the three cores of a kind must come to together.
struct Floor {
    demo::Grade grade;
    double least_f1;
    double least_worst_f1; ///< Of a single core.
    double most_escaped;   ///< Mistakes that nobody is pointed at, for 100 rings.
    double most_asked;     ///< Places to look at, as a share of the boundaries proposed.
    double most_error_px;  ///< Median error of position.
};

// What a kind aims at over many cores stands beside its floors. Where the aim is met on these cores it is the floor.
// Where it isn't yet, the floor is what was measured when this was written, with room for about one mistake more: of
// 200 rings one that escapes is 0.5 of 100. Raise it when the program gets better; lower it only for harder cores.
constexpr std::array floors{
    // Aim: 0.997, 0.98, 0.1, 0.04, 0.2. Measured: F1 0.996, one mistake, which a finding points at.
    Floor{demo::Grade::ConiferClear, 0.995, 0.98, 0.1, 0.04, 0.2},
    // Aims, and floors: all met.
    Floor{demo::Grade::ConiferHard, 0.985, 0.94, 0.4, 0.11, 0.25},
    Floor{demo::Grade::ConiferNarrow, 0.99, 0.98, 0.15, 0.05, 0.35},
    // All met.
    Floor{demo::Grade::RingPorous, 0.97, 0.94, 1.0, 0.18, 0.7},
    Floor{demo::Grade::DiffusePorous, 0.95, 0.85, 0.8, 0.20, 0.6},
    Floor{demo::Grade::Broken, 0.975, 0.94, 1.0, 0.08, 0.2},
};

const char* name_of(demo::Grade grade) {
    return std::ranges::find(demo::grades(), grade, &demo::GradeName::grade)->name;
}

/// Narrow rings are kept at the resolution that shows them, all else is rendered at the usual one: it takes a while.
demo::Scene scene_of(demo::Grade grade, int strength) {
    demo::Scene scene = demo::graded_core(grade, strength, graded_seed, 1).scenes.front();
    if (grade != demo::Grade::ConiferNarrow) {
        scene.dpi = std::min(scene.dpi, usual_dpi);
    }
    return scene;
}

Figures figures_of_kind(demo::Grade grade) {
    std::vector<CaseScore> scores;
    for (int strength = 1; strength <= 3; ++strength) {
        const test::TemporaryFolder folder;
        const test::RenderedScan core = test::rendered_scan(folder, scene_of(grade, strength));
        const Reading reading = test::read_along_truth(core, OuterWood::Unknown);
        scores.push_back(case_score(core.truth(), reading, measure(reading).value()));
        std::printf("strength %d: F1 %.4f, %d of %d rings\n", strength, f1_of(scores.back()), scores.back().found,
                    scores.back().rings());
    }
    return figures_of(scores);
}

void PrintTo(const Floor& floor, std::ostream* out) {
    *out << name_of(floor.grade);
}

class GradedCores : public testing::TestWithParam<Floor> {};

TEST_P(GradedCores, AreReadAsWellAsBefore) {
    const Floor& floor = GetParam();
    const Figures figures = figures_of_kind(floor.grade);
    std::printf("%s: %d rings, F1 %.4f, worst %.4f, %.2f of 100 escaped, %.1f %% asked, error %.3f px\n",
                name_of(floor.grade), figures.rings, *figures.f1, *figures.worst_f1, *figures.escaped,
                100.0 * *figures.asked, *figures.error_px);
    ASSERT_GT(figures.rings, 120);
    EXPECT_GE(*figures.f1, floor.least_f1);
    EXPECT_GE(*figures.worst_f1, floor.least_worst_f1);
    EXPECT_LE(*figures.escaped, floor.most_escaped);
    EXPECT_LE(*figures.asked, floor.most_asked);
    EXPECT_LE(*figures.error_px, floor.most_error_px);
}

INSTANTIATE_TEST_SUITE_P(Kinds, GradedCores, testing::ValuesIn(floors), [](const auto& kind) {
    std::string name = name_of(kind.param.grade);
    std::ranges::replace(name, '-', '_');
    return name;
});

} // namespace
} // namespace pithward::accuracy
