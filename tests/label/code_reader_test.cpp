// Codes off pictures: however they lie, however large, several at once, and out of what was made to mislead.
#include "libcore/field/core_code.h"
#include "libimaging/code/code_reader.h"
#include "tests/label/drawn_code.h"
#include "tests/support/rendered_scan.h"

#include <gtest/gtest.h>
#include <opencv2/imgproc.hpp>

#include <set>

namespace pithward::test {
namespace {

constexpr double resolution_dpi = 1200.0;

/// Blurred and noisy as scanned, the same each time.
cv::Mat as_scanned(const cv::Mat& grey, double blur_px) {
    cv::Mat picture;
    cv::GaussianBlur(grey, picture, {}, blur_px);
    cv::Mat noise(picture.size(), CV_16SC1);
    cv::RNG random(11);
    random.fill(noise, cv::RNG::NORMAL, 0.0, 6.0);
    cv::Mat noisy;
    cv::add(picture, noise, noisy, cv::noArray(), CV_8U);
    return noisy;
}

std::set<std::string> texts(const std::vector<CodeOnScan>& codes) {
    std::set<std::string> all;
    for (const CodeOnScan& code : codes) {
        all.insert(code.text);
    }
    return all;
}

demo::Picture picture_of(const cv::Mat& rgb) {
    demo::Picture picture{.pixels = {}, .width = rgb.cols, .height = rgb.rows, .dpi = resolution_dpi};
    picture.pixels.assign(rgb.datastart, rgb.dataend);
    return picture;
}

TEST(CodeReader, ReadsACodeTurnedHowever) {
    for (double degrees = 0.0; degrees < 360.0; degrees += 23.0) {
        const auto codes = read_codes(as_scanned(turned_code("HW/HW01A", 6.0, degrees), 1.0));
        ASSERT_EQ(codes.size(), 1U) << degrees << " degrees";
        EXPECT_EQ(codes[0].text, "HW/HW01A");
        const double middle = 0.5 * std::ceil(1.5 * 29 * 6.0);
        EXPECT_NEAR(codes[0].at.x, middle, 6.0) << degrees;
        EXPECT_NEAR(codes[0].at.y, middle, 6.0) << degrees;
        EXPECT_NEAR(codes[0].side, 21 * 6.0, 12.0);
    }
}

TEST(CodeReader, ReadsFineAndCoarseOnes) {
    for (const double module : {2.5, 3.0, 4.0, 9.0, 20.0, 38.0}) {
        const auto codes = read_codes(as_scanned(turned_code("Hill/H01A", module, 8.0), 0.25 * module));
        EXPECT_EQ(texts(codes), std::set<std::string>{"Hill/H01A"}) << module << " px a square";
    }
}

TEST(CodeReader, GivesNamesBackWhateverTheyHold) {
    const std::string hebrew = "\xD7\xA2\xD7\xA5-12";
    const std::string umlauts = "M\xC3\xBChl\xC3\xB6\x64";
    const std::string chinese = "\xE6\x9D\x89";
    for (const field::CodeNames& names : {field::CodeNames{"HW", "HW01A"},
                                          {hebrew, hebrew + "a"},
                                          {umlauts, chinese},
                                          {"Hill/North", "1/2"},
                                          {"50%/%2F", "%"},
                                          {"HW", std::string(140, 'q') + "0123456789"}}) {
        const auto codes = read_codes(as_scanned(turned_code(field::core_code(names), 4.0, 200.0), 1.0));
        ASSERT_EQ(codes.size(), 1U) << names.core;
        EXPECT_EQ(field::names_in_code(codes[0].text), names);
    }
}

TEST(CodeReader, ReadsSeveralOnAScanOfCoresAndNothingElse) {
    const TemporaryFolder folder;
    std::vector<demo::Scene> scenes;
    for (int i = 1; i <= 3; ++i) {
        scenes.push_back(clear_scene(5, i, 20));
        scenes.back().dpi = resolution_dpi;
    }
    scenes.front().mount.width_mm = 20.0;
    const RenderedScan plain = rendered_tray(folder, scenes);
    EXPECT_TRUE(read_codes(plain.scan).value().empty()) << "wood is no code";

    cv::Mat picture = plain.scan.read({0, 0, plain.scan.header().width, plain.scan.header().height}).value().clone();
    cv::copyMakeBorder(picture, picture, 700, 700, 0, 0, cv::BORDER_CONSTANT, cv::Scalar(190, 170, 140));
    // Codes of 5 mm and 7 mm with squares of 0.25 and 0.3 mm, small ones for a mount.
    paste(picture, turned_code("HW/HW01A", 12.0, 3.0), {480, 480});
    paste(picture, turned_code("HW/HW02B", 12.0, 91.0), {picture.cols - 500, 480});
    paste(picture, turned_code("HW/HW03A", 15.0, 184.0), {480, picture.rows - 400});
    const ScanFile scan = opened(folder, picture_of(picture));
    const auto codes = read_codes(scan);
    ASSERT_TRUE(codes.has_value()) << codes.error().line();
    ASSERT_EQ(texts(*codes), (std::set<std::string>{"HW/HW01A", "HW/HW02B", "HW/HW03A"}));
    ASSERT_EQ(codes->size(), 3U) << "each once";
    for (const CodeOnScan& code : *codes) {
        const bool first = code.text == "HW/HW01A" || code.text == "HW/HW03A";
        EXPECT_NEAR(code.at.x, first ? 480.0 : picture.cols - 500.0, 20.0) << code.text;
        EXPECT_NEAR(code.at.y, code.text == "HW/HW03A" ? picture.rows - 400.0 : 480.0, 20.0) << code.text;
    }
}

TEST(CodeReader, ACodeWithMuchOfItGoneIsNone) {
    cv::Mat picture = turned_code("HW/HW01A", 8.0, 0.0);
    const int middle = picture.cols / 2;
    picture(cv::Rect(middle - 60, middle - 60, 120, 120)).setTo(40);
    EXPECT_TRUE(read_codes(picture).empty());
}

TEST(CodeReader, EndsOnWhatWasMadeToMislead) {
    for (const cv::Size size : {cv::Size(1, 1), cv::Size(3, 4000), cv::Size(4000, 3), cv::Size(25, 25)}) {
        EXPECT_TRUE(read_codes(cv::Mat(size, CV_8UC1, cv::Scalar(200))).empty());
    }
    // Nothing but corners of codes, of several sizes: what looks for codes by all of three would never end.
    cv::Mat corners(1600, 1600, CV_8UC1, cv::Scalar(235));
    for (int y = 0; y + 30 < corners.rows; y += y < 800 ? 18 : 30) {
        for (int x = 0; x + 30 < corners.cols; x += y < 800 ? 18 : 30) {
            const int module = y < 800 ? 2 : 3;
            corners(cv::Rect(x, y, 7 * module, 7 * module)).setTo(30);
            corners(cv::Rect(x + module, y + module, 5 * module, 5 * module)).setTo(235);
            corners(cv::Rect(x + 2 * module, y + 2 * module, 3 * module, 3 * module)).setTo(30);
        }
    }
    EXPECT_TRUE(read_codes(corners).empty());
    cv::Mat noise(900, 900, CV_8UC1);
    cv::RNG random(3);
    random.fill(noise, cv::RNG::UNIFORM, 0, 256);
    EXPECT_TRUE(read_codes(noise).empty());
}

} // namespace
} // namespace pithward::test
