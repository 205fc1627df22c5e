#include "app/picture/scan_picture.h"

#include <algorithm>
#include <cstdint>

namespace pithward::picture {

namespace {

template <typename Sample>
void copy_rows(const cv::Mat& from, QImage& to, int shift) {
    for (int y = 0; y < from.rows; ++y) {
        const auto* in = from.ptr<Sample>(y);
        auto* out = reinterpret_cast<QRgb*>(to.scanLine(y));
        for (int x = 0; x < from.cols; ++x, in += 3) {
            out[x] = qRgb(in[0] >> shift, in[1] >> shift, in[2] >> shift);
        }
    }
}

} // namespace

QImage picture_of(const cv::Mat& rgb) {
    QImage picture(rgb.cols, rgb.rows, QImage::Format_RGB32);
    if (picture.isNull()) {
        return picture;
    }
    if (rgb.type() == CV_16UC3) {
        copy_rows<std::uint16_t>(rgb, picture, 8);
    } else if (rgb.type() == CV_8UC3) {
        copy_rows<std::uint8_t>(rgb, picture, 0);
    } else {
        picture.fill(Qt::gray);
    }
    return picture;
}

int reduction_for(const Scan& scan, int greatest_side) {
    const int longer = std::max(scan.width, scan.height);
    return std::max(1, (longer + greatest_side - 1) / std::max(1, greatest_side));
}

Outcome<QImage> scan_picture(const ScanFile& scan, int greatest_side, const Work& work) {
    return scan.overview(reduction_for(scan.header(), greatest_side), work).map(picture_of);
}

} // namespace pithward::picture
