#include "libcore/field/tree_ages.h"

#include <gtest/gtest.h>

namespace pithward::field {
namespace {

DatedPith dated(const char* core, int year, int low, int high, std::optional<double> height_cm = std::nullopt) {
    DatedPith one;
    one.core.id = core;
    one.core.core_height_cm = height_cm;
    one.pith = {Year(year), Year(low), Year(high)};
    return one;
}

TEST(TreeAges, DifferBeyondBothIntervals) {
    const auto remark = tree_ages_remark(dated("A", 1900, 1897, 1902), dated("B", 1908, 1904, 1910));
    ASSERT_TRUE(remark);
    EXPECT_NE(remark->reason.find("core B"), std::string::npos);
    EXPECT_NE(remark->reason.find("1908 (1904 to 1910)"), std::string::npos);
    EXPECT_EQ(remark->end, Remark::End::Inner);
}

TEST(TreeAges, TheFindingOfAPairIsKnownWhateverYearsItTells) {
    Reading reading;
    const auto remark = tree_ages_remark(dated("A", 1900, 1897, 1902), dated("B", 1908, 1904, 1910));
    ASSERT_TRUE(remark);
    reading.findings = {finding_of(reading, *remark)};
    EXPECT_EQ(tree_ages_finding(reading, dated("B", 1950, 1949, 1951).core), reading.findings.data());
    EXPECT_EQ(tree_ages_finding(reading, dated("C", 1908, 1904, 1910).core), nullptr);
}

TEST(TreeAges, WithinTheIntervalsTheyAgree) {
    EXPECT_FALSE(tree_ages_remark(dated("A", 1900, 1897, 1904), dated("B", 1908, 1904, 1910)));
}

TEST(TreeAges, OfOtherHeightsAreNotHeldAgainstEachOther) {
    EXPECT_FALSE(tree_ages_remark(dated("A", 1900, 1897, 1902, 30.0), dated("B", 1908, 1904, 1910, 130.0)));
    EXPECT_TRUE(tree_ages_remark(dated("A", 1900, 1897, 1902, 120.0), dated("B", 1908, 1904, 1910, 130.0)));
}

} // namespace
} // namespace pithward::field
