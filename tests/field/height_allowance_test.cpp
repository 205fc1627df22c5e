#include "libcore/field/height_allowance.h"

#include <gtest/gtest.h>

namespace pithward::field {
namespace {

TEST(Allowance, OfTheSheetGoesBeforeTheOneGivenForAll) {
    const HeightAllowance given{8.0, 3.0};
    Core core;
    EXPECT_EQ(height_allowance(core, given), given);
    EXPECT_FALSE(height_allowance(core, std::nullopt));
    core.others["years_to_core_height"] = "12.5";
    EXPECT_EQ(height_allowance(core, given), (HeightAllowance{12.5, 0.0}));
    core.others["years_to_core_height_sd"] = "4";
    EXPECT_EQ(height_allowance(core, std::nullopt), (HeightAllowance{12.5, 4.0}));
    core.others["years_to_core_height"] = "many";
    EXPECT_EQ(height_allowance(core, given), given);
}

} // namespace
} // namespace pithward::field
