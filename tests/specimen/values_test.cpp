#include "libcore/specimen/boundary.h"
#include "libcore/specimen/finding.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/units.h"
#include "libcore/specimen/wood.h"

#include <gtest/gtest.h>

namespace pithward {
namespace {

TEST(Fault, IsOneLineWhateverItHolds) {
    EXPECT_EQ((Fault{"a.rwl, line 3", "no year", "write one"}).line(), "a.rwl, line 3: no year; write one");
    EXPECT_EQ((Fault{"", "no year", ""}).line(), "no year");
    EXPECT_EQ((Fault{"a\nb", "c\r\nd", "e"}).line(), "a b: c  d; e");
}

TEST(Units, DirectionsOfLinesLieInHalfATurn) {
    constexpr double pi = std::numbers::pi;
    EXPECT_DOUBLE_EQ(line_direction(0.25), 0.25);
    EXPECT_DOUBLE_EQ(line_direction(-0.25), pi - 0.25);
    EXPECT_DOUBLE_EQ(line_direction(pi), 0.0);
    EXPECT_NEAR(line_direction(7.0 * pi + 0.5), 0.5, 1e-12);
    // A tiny negative angle must not round up to half a turn.
    EXPECT_LT(line_direction(-1e-300), pi);
    EXPECT_DOUBLE_EQ(degrees(radians(33.0)), 33.0);
}

TEST(Words, ReadBackAsTheSameValue) {
    for (const WoodType wood : all_wood_types) {
        EXPECT_EQ(wood_type_from(word(wood)), wood);
    }
    for (const OuterWood outer : {OuterWood::Complete, OuterWood::Unfinished, OuterWood::Lost, OuterWood::Unknown}) {
        EXPECT_EQ(outer_wood_from(word(outer)), outer);
    }
    for (const Flag flag :
         {Flag::Faint, Flag::VeryNarrow, Flag::Wedging, Flag::Steep, Flag::WidthOutlier, Flag::NearBreak}) {
        EXPECT_EQ(flag_from(word(flag)), flag);
    }
    for (const FindingKind kind :
         {FindingKind::PossiblyFalse, FindingKind::PossiblyOverlooked, FindingKind::Doubtful, FindingKind::OuterWood,
          FindingKind::BarkEnd, FindingKind::LostWood, FindingKind::Wedging, FindingKind::Scale, FindingKind::Pith,
          FindingKind::PastPith, FindingKind::Slip}) {
        EXPECT_EQ(finding_kind_from(word(kind)), kind);
    }
    EXPECT_FALSE(wood_type_from("birch"));
}

TEST(Boundary, FromACandidateIsTheProgramsAndConfirmedByNobody) {
    Candidate candidate;
    candidate.leg = 1;
    candidate.at = {3, 4};
    candidate.tangent = 1.5;
    candidate.sd = Millimetres(0.01);
    candidate.confidence = 0.9;
    candidate.flags = {Flag::Faint};
    candidate.latewood = Millimetres(0.2);
    const Boundary boundary = boundary_from(candidate, {7});
    EXPECT_EQ(boundary.id.value, 7);
    EXPECT_EQ(boundary.leg, 1U);
    EXPECT_EQ(boundary.at, candidate.at);
    EXPECT_EQ(boundary.flags, candidate.flags);
    EXPECT_EQ(boundary.latewood, candidate.latewood);
    EXPECT_EQ(boundary.origin, Origin::Program);
    EXPECT_EQ(boundary.confirmation, Confirmation::None);
    EXPECT_FALSE(boundary.sd_assumed);
}

} // namespace
} // namespace pithward
