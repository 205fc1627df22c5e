#pragma once

#include <opencv2/core.hpp>

#include <string>

namespace pithward::test {

/// The code of a text as labels have it (level M, UTF-8), grey on white with a rim of four squares, each `module`
/// pixels.
[[nodiscard]] cv::Mat drawn_code(const std::string& text, double module);

/// The same turned by an angle, in a picture of even grey that holds it all, its middle in the picture's.
[[nodiscard]] cv::Mat turned_code(const std::string& text, double module, double degrees);

/// Puts a grey picture into one of RGB, its middle at a place.
void paste(cv::Mat& picture, const cv::Mat& grey, cv::Point middle);

} // namespace pithward::test
