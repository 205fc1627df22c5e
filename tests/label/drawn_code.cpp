#include "tests/label/drawn_code.h"

#include <ZXing/BitMatrix.h>
#include <ZXing/CharacterSet.h>
#include <ZXing/MultiFormatWriter.h>
#include <opencv2/imgproc.hpp>

#include <cmath>

namespace pithward::test {

cv::Mat drawn_code(const std::string& text, double module) {
    const ZXing::BitMatrix squares = ZXing::MultiFormatWriter(ZXing::BarcodeFormat::QRCode)
                                         .setEncoding(ZXing::CharacterSet::UTF8)
                                         .setEccLevel(4)
                                         .setMargin(4)
                                         .encode(text, 0, 0);
    cv::Mat small(squares.height(), squares.width(), CV_8UC1);
    for (int y = 0; y < small.rows; ++y) {
        for (int x = 0; x < small.cols; ++x) {
            small.at<std::uint8_t>(y, x) = squares.get(x, y) ? 40 : 235;
        }
    }
    cv::Mat large;
    cv::resize(small, large, {}, module, module, cv::INTER_NEAREST);
    return large;
}

cv::Mat turned_code(const std::string& text, double module, double degrees) {
    const cv::Mat code = drawn_code(text, module);
    const int side = static_cast<int>(std::ceil(1.5 * code.cols));
    cv::Mat turn = cv::getRotationMatrix2D(
        {0.5F * static_cast<float>(code.cols - 1), 0.5F * static_cast<float>(code.rows - 1)}, degrees, 1.0);
    turn.at<double>(0, 2) += 0.5 * (side - code.cols);
    turn.at<double>(1, 2) += 0.5 * (side - code.rows);
    cv::Mat picture;
    cv::warpAffine(code, picture, turn, {side, side}, cv::INTER_LINEAR, cv::BORDER_CONSTANT, cv::Scalar(170));
    return picture;
}

void paste(cv::Mat& picture, const cv::Mat& grey, cv::Point middle) {
    cv::Mat colour;
    cv::cvtColor(grey, colour, cv::COLOR_GRAY2RGB);
    colour.copyTo(picture(cv::Rect(middle - cv::Point(grey.cols / 2, grey.rows / 2), grey.size())));
}

} // namespace pithward::test
