// Which core of a scan is which.
#include "libimaging/label/placed_cores.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace pithward::test {
namespace {

using field::ScanPlace;
using Places = std::vector<std::optional<ScanPlace>>;

const Calibration mount_scale{10.0, 10.0, 0.0, Calibration::Source::FileTag};

FoundCore core(ImagePoint from, ImagePoint to) {
    FoundCore found;
    found.path = {from, to};
    found.width_mm = 5.0;
    return found;
}

std::vector<std::size_t> firsts(const std::vector<WholeCore>& cores) {
    std::vector<std::size_t> paths;
    paths.reserve(cores.size());
    for (const WholeCore& one : cores) {
        paths.push_back(one.front());
    }
    return paths;
}

using Order = std::vector<std::size_t>;

TEST(PlacedCores, AreCountedAsTheMountLies) {
    const std::vector<FoundCore> lying{core({0, 500}, {1000, 520}), core({1000, 100}, {0, 90}),
                                       core({0, 300}, {900, 310})};
    EXPECT_EQ(firsts(whole_cores(lying, mount_scale)), (Order{1, 2, 0}));
    EXPECT_EQ(firsts(whole_cores(lying, mount_scale, 3)), (Order{0, 2, 1})) << "shown upside down";
    EXPECT_EQ(firsts(whole_cores(lying, mount_scale, 6)), (Order{0, 2, 1}))
        << "turned to the right they stand, the lowest left";
    EXPECT_EQ(firsts(whole_cores(lying, mount_scale, 8)), (Order{1, 2, 0}));
    const std::vector<FoundCore> standing{core({500, 0}, {510, 900}), core({100, 1000}, {90, 0}),
                                          core({300, 0}, {310, 900})};
    EXPECT_EQ(firsts(whole_cores(standing, mount_scale)), (Order{1, 2, 0}));
    // Two in each row, on a mount that lies askew: the row counts, not which begins higher.
    const std::vector<FoundCore> rows{core({1100, 60}, {2000, 105}), core({0, 0}, {1000, 50}),
                                      core({1100, 260}, {2000, 305}), core({0, 200}, {1000, 250})};
    EXPECT_EQ(firsts(whole_cores(rows, mount_scale)), (Order{1, 0, 3, 2}));
}

TEST(PlacedCores, TheTwoSidesOfOneAreOne) {
    FoundCore left = core({0, 100}, {500, 100});
    FoundCore right = core({1000, 100}, {500, 100});
    left.pith = right.pith = PithOnCore{{500, 100}, 0.99, true};
    const std::vector<FoundCore> found{core({0, 300}, {900, 300}), left, right};
    const auto cores = whole_cores(found, mount_scale);
    ASSERT_EQ(cores.size(), 2U);
    EXPECT_EQ(cores[0], (WholeCore{1, 2}));
    // The same two without a pith between them are two cores.
    left.pith = right.pith = std::nullopt;
    EXPECT_EQ(whole_cores(std::vector{left, right}, mount_scale).size(), 2U);
}

struct ThreeCores : testing::Test {
    std::vector<FoundCore> found{core({0, 100}, {1000, 100}), core({0, 300}, {1000, 300}), core({0, 500}, {1000, 500})};
    std::vector<WholeCore> cores = whole_cores(found, mount_scale);

    Outcome<std::vector<std::size_t>> at(const Places& places) const {
        return cores_at(places, cores, found, mount_scale, "tray.png");
    }
};

TEST_F(ThreeCores, AreGivenByNumberByACodeBesideAndByAPlaceOnThem) {
    EXPECT_EQ(at({ScanPlace(1), ScanPlace(2), ScanPlace(3)}).value(), (Order{0, 1, 2}));
    EXPECT_EQ(at({ScanPlace(3), ScanPlace(1), ScanPlace(2)}).value(), (Order{2, 0, 1}));
    EXPECT_EQ(at({ImagePoint{1200, 480}, ImagePoint{-200, 120}, ImagePoint{1200, 330}}).value(), (Order{2, 0, 1}));
    EXPECT_EQ(at({ImagePoint{300, 512}}).value(), Order{2}) << "on a core, whatever else is there";
}

TEST(PlacedCores, ACodeInLineWithACoreIsItsOwn) {
    // The middle one is short, so that the ends of the others are nearer to its code.
    const std::vector<FoundCore> found{core({0, 100}, {1000, 100}), core({600, 200}, {900, 200}),
                                       core({0, 300}, {1000, 300})};
    const auto cores = whole_cores(found, mount_scale);
    EXPECT_EQ(cores_at(Places{ImagePoint{-100, 300}, ImagePoint{-100, 200}, ImagePoint{-100, 100}}, cores, found,
                       mount_scale, "tray.png")
                  .value(),
              (Order{2, 1, 0}));
}

TEST_F(ThreeCores, AreNeverGuessed) {
    const auto two = at({ScanPlace(1), ScanPlace(2)});
    ASSERT_FALSE(two);
    EXPECT_EQ(two.error().where, "tray.png");
    EXPECT_NE(two.error().what.find("3 cores found on the scan, 2 told for it"), std::string::npos) << two.error().what;
    EXPECT_FALSE(at({ScanPlace(1), ScanPlace(2), ScanPlace(3), ScanPlace(4)}));
    EXPECT_FALSE(at({ScanPlace(1)}));
    EXPECT_FALSE(at({std::nullopt}));
    EXPECT_FALSE(at({std::nullopt, std::nullopt, std::nullopt}));
    EXPECT_FALSE(at({ScanPlace(1), ScanPlace(1), ScanPlace(2)}));
    EXPECT_FALSE(at({ScanPlace(1), ScanPlace(2), ScanPlace(7)}));
    EXPECT_FALSE(at({ImagePoint{1200, 110}, ImagePoint{1200, 120}, ImagePoint{1200, 480}})) << "two codes by one core";
    EXPECT_FALSE(at({ImagePoint{1200, 110}, ImagePoint{1200, 300}})) << "a third core has no code";
}

TEST(PlacedCores, ASingleCoreNeedsNoPlace) {
    const std::vector<FoundCore> found{core({0, 100}, {1000, 100})};
    const auto cores = whole_cores(found, mount_scale);
    EXPECT_EQ(cores_at(Places{std::nullopt}, cores, found, mount_scale, "a.png").value(), Order{0});
    EXPECT_FALSE(cores_at(Places{std::nullopt, std::nullopt}, cores, found, mount_scale, "a.png"));
    EXPECT_FALSE(cores_at(Places{ScanPlace(1)}, {}, {}, mount_scale, "a.png"));
}

} // namespace
} // namespace pithward::test
