#include "demo-scans/maker/graded.h"
#include "libimaging/boundary/find_cores.h"
#include "libimaging/boundary/propose_reading.h"
#include "libimaging/boundary/why_no_wood.h"
#include "tests/support/rendered_scan.h"

#include <gtest/gtest.h>
#include <opencv2/imgproc.hpp>

#include <string>

namespace pithward::test {
namespace {

constexpr int wide = 3000;
constexpr int high = 300;

/// A picture of 1200 dpi from brightness values about 1, tinted like wood.
demo::Picture tinted(const cv::Mat1f& values) {
    demo::Picture picture = plain_picture(values.cols, values.rows, 0, 1200.0);
    const float tint[3] = {214.0F, 178.0F, 128.0F};
    auto to = picture.pixels.begin();
    for (const float value : values) {
        for (const float channel : tint) {
            *to++ = cv::saturate_cast<std::uint8_t>(channel * value);
        }
    }
    return picture;
}

/// Noise smoothed by so many pixels across and along, of a relative spread of 0.12.
cv::Mat1f textured_noise(double across, double along, std::uint64_t seed = 11) {
    cv::Mat1f noise(high, wide);
    cv::theRNG().state = seed;
    cv::randn(noise, 0.0, 1.0);
    if (across > 0.0) {
        cv::GaussianBlur(noise, noise, cv::Size(0, 0), along, across);
    }
    cv::Scalar mean;
    cv::Scalar deviation;
    cv::meanStdDev(noise, mean, deviation);
    return 1.0F + noise * (0.12 / deviation[0]);
}

/// Threads over and under each other, `pitch` pixels apart.
cv::Mat1f cloth(double pitch) {
    cv::Mat1f values(high, wide);
    for (int y = 0; y < high; ++y) {
        for (int x = 0; x < wide; ++x) {
            const bool over = (static_cast<int>(x / pitch) + static_cast<int>(y / pitch)) % 2 == 0;
            values(y, x) = static_cast<float>(0.6 + 0.4 * std::abs(std::sin(CV_PI * (over ? x : y) / pitch)));
        }
    }
    return values;
}

cv::Mat1f print() {
    cv::Mat1f values(high, wide, 1.15F);
    for (int line = 0; line < 3; ++line) {
        cv::putText(values, "The rings of a tree tell how it grew from one year to the next and when",
                    {10, 90 + 90 * line}, cv::FONT_HERSHEY_SIMPLEX, 2.4, cv::Scalar(0.15), 7, cv::LINE_AA);
    }
    return values;
}

/// Black bars of random breadth on white, with a scanner's noise and blur.
cv::Mat1f bars(std::uint64_t seed) {
    cv::Mat1f values(high, wide, 1.15F);
    cv::RNG random(seed);
    for (int x = 0; x < wide;) {
        const int white = random.uniform(6, 60);
        const int black = random.uniform(4, 30);
        values.colRange(std::min(wide, x + white), std::min(wide, x + white + black)).setTo(0.15F);
        x += white + black;
    }
    cv::GaussianBlur(values, values, cv::Size(0, 0), 0.7);
    cv::Mat1f noise(high, wide);
    cv::theRNG().state = seed;
    cv::randn(noise, 0.0, 0.006);
    return values + noise;
}

void expect_refused(const ScanFile& scan, const ReadingRequest& request) {
    const auto reading = propose_reading(scan, request);
    ASSERT_FALSE(reading.has_value()) << reading->boundaries.size() << " boundaries";
    EXPECT_NE(reading.error().what.find("no wood"), std::string::npos) << reading.error().line();
    EXPECT_FALSE(reading.error().remedy.empty());
}

ReadingRequest along_the_middle(const ScanFile& scan) {
    ReadingRequest drawn;
    drawn.calibration = *believed_calibration(scan.header(), std::nullopt);
    drawn.path = {{60.0, 0.5 * high}, {wide - 60.0, 0.5 * high}};
    return drawn;
}

/// A path drawn along the middle of a picture is refused.
void expect_not_read_along(const cv::Mat1f& values, const std::string& what) {
    SCOPED_TRACE(what);
    const TemporaryFolder folder;
    const ScanFile scan = opened(folder, tinted(values));
    expect_refused(scan, along_the_middle(scan));
}

/// The same, and whatever is found in the picture by itself.
void expect_not_read(const cv::Mat1f& values, const std::string& what) {
    SCOPED_TRACE(what);
    const TemporaryFolder folder;
    const ScanFile scan = opened(folder, tinted(values));
    const ReadingRequest drawn = along_the_middle(scan);
    expect_refused(scan, drawn);
    const auto found = find_cores(scan, drawn.calibration);
    ASSERT_TRUE(found.has_value());
    for (const FoundCore& core : *found) {
        expect_refused(scan, request_for(core, "scan", drawn.calibration));
    }
}

TEST(NoWoodTrial, NoiseIsNoWood) {
    expect_not_read(textured_noise(0.0, 0.0), "white noise");
    expect_not_read(textured_noise(2.0, 2.0), "fine clouds");
    expect_not_read(textured_noise(6.0, 6.0), "clouds");
    expect_not_read(textured_noise(14.0, 14.0), "broad clouds");
}

TEST(NoWoodTrial, NoiseOfAllSizesAtOnceIsNoWood) {
    for (const std::uint64_t seed : {11U, 12345U, 777U}) {
        cv::Mat1f even = -3.0F * cv::Mat1f::ones(high, wide);
        cv::Mat1f broad = -2.8F * cv::Mat1f::ones(high, wide);
        for (const double size : {2.0, 6.0, 14.0, 40.0}) {
            even += textured_noise(size, size, seed);
        }
        broad += 0.3F * textured_noise(2.0, 2.0, seed) + 0.5F * textured_noise(6.0, 6.0, seed) +
                 textured_noise(14.0, 14.0, seed) + 2.0F * textured_noise(40.0, 40.0, seed);
        expect_not_read_along(even, "as much of each size");
        expect_not_read_along(broad, "more of the broad ones");
    }
}

TEST(NoWoodTrial, StreaksAtASlantAreNoWood) {
    for (const std::uint64_t seed : {11U, 12345U, 777U}) {
        cv::Mat1f streaks = textured_noise(30.0, 3.0, seed);
        const cv::Mat turn = cv::getRotationMatrix2D({0.5F * wide, 0.5F * high}, 45.0, 1.0);
        cv::warpAffine(streaks, streaks, turn, streaks.size(), cv::INTER_LINEAR, cv::BORDER_REFLECT);
        expect_not_read(streaks, "slant");
    }
}

TEST(NoWoodTrial, BarsAreNoWood) {
    for (const std::uint64_t seed : {11U, 12345U, 777U}) {
        expect_not_read(bars(seed), "bars");
    }
}

// Inner ends of cores that miss the pith cross their rings at a slant; some trees grow as evenly as cloth is woven.
TEST(WhyNoWood, SlantedAndEvenRingsAreWood) {
    boundary::WoodSigns slanted;
    slanted.one_sided = 2.5;
    slanted.agreement = 0.97;
    slanted.aligned = -0.65;
    slanted.one_way = 0.6;
    EXPECT_FALSE(boundary::why_no_wood(slanted, WoodType::Conifer, 30.0).has_value());
    boundary::WoodSigns even;
    even.one_sided = 2.4;
    even.regular = 0.63;
    EXPECT_FALSE(boundary::why_no_wood(even, WoodType::Conifer, 30.0).has_value());
}

TEST(NoWoodTrial, StreaksAreNoWoodWhicheverWayTheyRun) {
    expect_not_read(textured_noise(30.0, 3.0), "across");
    expect_not_read(textured_noise(3.0, 30.0), "along");
}

TEST(NoWoodTrial, ClothAndPrintAreNoWood) {
    expect_not_read(cloth(16.0), "fine cloth");
    expect_not_read(cloth(50.0), "coarse cloth");
    expect_not_read(print(), "print");
}

// Half of its vessels are filled with chalk, so that in the mean its earlywood is as light as its latewood.
TEST(WhyNoWoodTrial, VesselsOfWhichHalfAreChalkedAreWood) {
    const TemporaryFolder folder;
    const demo::Scene scene = demo::graded_core(demo::Grade::RingPorous, 1, 552001, 1).scenes.front();
    const RenderedScan rendered = rendered_scan(folder, scene);
    const Reading reading = read_along_truth(rendered);
    EXPECT_EQ(reading.wood, WoodType::RingPorous);
    EXPECT_NEAR(static_cast<double>(reading.boundaries.size()), static_cast<double>(rendered.truth().boundaries.size()),
                3.0);
}

// Narrow rings with broad latewood are as sharp on one side as on the other once the scanner has blurred them.
TEST(WhyNoWood, BlurredRingsThatGoOnAcrossThePathAreWood) {
    boundary::WoodSigns signs;
    signs.one_sided = 1.0;
    signs.agreement = 0.87;
    EXPECT_FALSE(boundary::why_no_wood(signs, WoodType::Conifer, 40.0).has_value());
    signs.agreement = 0.46; // as of streaks
    EXPECT_TRUE(boundary::why_no_wood(signs, WoodType::Conifer, 40.0).has_value());
}

TEST(WhyNoWood, APathAlongTheRingsIsToldSo) {
    const TemporaryFolder folder;
    demo::Scene scene = clear_scene(510, 2, 30);
    scene.core_width_mm = 14.0; // a slat, wide enough for a path along its rings
    scene.mount.width_mm = 20.0;
    scene.tilt_deg = 0.0;
    const RenderedScan core = rendered_scan(folder, scene);
    const demo::TrueBoundary& ring = core.truth().boundaries[core.truth().boundaries.size() / 2];
    ReadingRequest request;
    request.calibration = core.calibration;
    const double reach = 6.0 * core.calibration.px_per_mm_y;
    request.path = {{ring.at.x, ring.at.y - reach}, {ring.at.x, ring.at.y + reach}};
    const auto reading = propose_reading(core.scan, request);
    ASSERT_FALSE(reading.has_value());
    EXPECT_NE(reading.error().what.find("runs along the path"), std::string::npos) << reading.error().line();
}

TEST(NoWoodTrial, WoodOfAnyKindIsReadAlsoAsOnePathAcrossThePith) {
    const TemporaryFolder folder;
    for (const demo::Timber timber : {demo::Timber::Larch, demo::Timber::Ash, demo::Timber::Beech}) {
        demo::Scene scene = clear_scene(515, 3, 40);
        scene.timber = timber;
        scene.widths_mm.clear();
        scene.growth.rings = 25;
        scene.rings_to_pith = 0;
        scene.pith_offset_mm = 0.4;
        scene.past_pith_mm = 1000.0;
        const RenderedScan core = rendered_tray(folder, {scene});
        ReadingRequest request;
        request.calibration = core.calibration;
        request.path = {core.truths[0].path.front(), core.truths[1].path.front()};
        const auto reading = propose_reading(core.scan, request);
        EXPECT_TRUE(reading.has_value()) << demo::word(timber) << ": " << reading.error().line();
    }
}

} // namespace
} // namespace pithward::test
