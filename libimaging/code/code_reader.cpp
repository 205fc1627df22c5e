#define ZX_USE_UTF8 1 // the library's texts as UTF-8, not as wide letters

#include "libimaging/code/code_reader.h"

#include "libimaging/code/corner_marks.h"

#include <ZXing/ReadBarcode.h>
#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <cmath>
#include <exception>

namespace pithward {

namespace {

using label::CodeSquare;

constexpr double most_code_pixels = 24e6;
constexpr double enough_px_per_mm = 16.0;
constexpr double least_believed_dpi = 100.0; ///< 72 and 96 are what programs write that know nothing.
constexpr double mm_per_inch = 25.4;
constexpr std::size_t most_codes = 60; ///< As many as cores that are looked for on a scan.
constexpr std::size_t longest_text = 1000;

/// By how much a scan is reduced before codes are sought.
int code_reduction(const Scan& header) {
    const double area = static_cast<double>(header.width) * header.height;
    int reduction = std::max(1, static_cast<int>(std::ceil(std::sqrt(area / most_code_pixels))));
    if (header.tag_dpi_x && *header.tag_dpi_x >= least_believed_dpi) {
        reduction = std::max(reduction, static_cast<int>(*header.tag_dpi_x / mm_per_inch / enough_px_per_mm));
    }
    return std::min({reduction, header.width, header.height});
}

/// What the library reads in a small picture of dark (255) and light (0). How long it takes grows with the cube of what
/// looks like a corner, so a picture of many is not given to it.
ZXing::Results read_by_library(const cv::Mat& dark) {
    constexpr int most_runs = 700; // three corners of a code make some 50, its squares as many by chance
    if (label::corner_like_runs(dark) > most_runs) {
        return {};
    }
    const cv::Mat light = ~dark;
    try {
        const ZXing::ImageView view(light.data, light.cols, light.rows, ZXing::ImageFormat::Lum,
                                    static_cast<int>(light.step));
        return ZXing::ReadBarcodes(view, ZXing::DecodeHints()
                                             .setFormats(ZXing::BarcodeFormat::QRCode)
                                             .setTryHarder(true)
                                             .setTryRotate(false) // such a code is found however it lies
                                             .setTryDownscale(false)
                                             .setBinarizer(ZXing::Binarizer::BoolCast)
                                             .setMaxNumberOfSymbols(4));
    } catch (const std::exception&) { // what it can't read is no code
        return {};
    }
}

/// The codes in one square of a picture, in pixels of the picture.
std::vector<CodeOnScan> codes_in(const cv::Mat& grey, const CodeSquare& square) {
    constexpr double wanted_module_px = 5.0;
    const cv::Rect box =
        cv::Rect(cv::Point(static_cast<int>(square.box.x), static_cast<int>(square.box.y)),
                 cv::Size(static_cast<int>(square.box.width) + 1, static_cast<int>(square.box.height) + 1)) &
        cv::Rect(0, 0, grey.cols, grey.rows);
    if (box.empty()) {
        return {};
    }
    const double scale = wanted_module_px / square.module;
    cv::Mat part;
    cv::resize(grey(box), part, {}, scale, scale, scale < 1.0 ? cv::INTER_AREA : cv::INTER_CUBIC);
    cv::Mat by_all;
    cv::threshold(part, by_all, 0, 255, cv::THRESH_BINARY_INV | cv::THRESH_OTSU);
    std::vector<CodeOnScan> codes;
    for (cv::Mat dark : {by_all, label::dark_pixels(part)}) {
        cv::medianBlur(dark, dark, 3); // specks make work and no code
        for (const ZXing::Result& one : read_by_library(dark)) {
            std::string text = one.text();
            if (!one.isValid() || text.empty() || text.size() > longest_text) {
                continue;
            }
            const ZXing::Position& corners = one.position();
            ImagePoint middle;
            for (const ZXing::PointI& corner : corners) {
                middle = middle + ImagePoint{0.25 * corner.x, 0.25 * corner.y};
            }
            const double side = std::hypot(corners[1].x - corners[0].x, corners[1].y - corners[0].y);
            codes.push_back({std::move(text),
                             {(middle.x + 0.5) / scale - 0.5 + box.x, (middle.y + 0.5) / scale - 0.5 + box.y},
                             side / scale});
        }
        if (!codes.empty()) {
            break;
        }
    }
    return codes;
}

void add_unless_known(std::vector<CodeOnScan>& codes, CodeOnScan code) {
    const bool known = std::ranges::any_of(codes, [&](const CodeOnScan& one) {
        return one.text == code.text && std::hypot(one.at.x - code.at.x, one.at.y - code.at.y) < one.side;
    });
    if (!known && codes.size() < most_codes) {
        codes.push_back(std::move(code));
    }
}

bool covers(const CodeOnScan& code, const CodeSquare& square) {
    const ImagePoint middle{square.box.x + 0.5 * square.box.width, square.box.y + 0.5 * square.box.height};
    return std::hypot(code.at.x - middle.x, code.at.y - middle.y) < 0.5 * code.side;
}

} // namespace

std::vector<CodeOnScan> read_codes(const cv::Mat& picture) {
    constexpr int levels = 5; // from fine codes to one that fills the scan
    constexpr int least_side = 24;
    cv::Mat grey;
    if (picture.channels() == 1) {
        grey = picture;
    } else {
        cv::cvtColor(picture, grey, cv::COLOR_RGB2GRAY);
    }
    std::vector<CodeOnScan> codes;
    int tries = 250; // of all levels: what was made to mislead has an end
    double reduced = 1.0;
    for (int level = 0; level < levels && std::min(grey.rows, grey.cols) >= least_side; ++level) {
        for (const CodeSquare& square : label::code_squares(label::corner_marks(label::dark_pixels(grey)))) {
            const auto whole = [&](double place) { return (place + 0.5) * reduced - 0.5; };
            const CodeSquare in_picture{{square.box.x * reduced, square.box.y * reduced, square.box.width * reduced,
                                         square.box.height * reduced},
                                        square.module * reduced};
            const bool known =
                std::ranges::any_of(codes, [&](const CodeOnScan& code) { return covers(code, in_picture); });
            if (known || --tries < 0) {
                continue;
            }
            for (CodeOnScan& code : codes_in(grey, square)) {
                code.at = {whole(code.at.x), whole(code.at.y)};
                code.side *= reduced;
                add_unless_known(codes, std::move(code));
            }
        }
        cv::Mat half;
        cv::resize(grey, half, {}, 0.5, 0.5, cv::INTER_AREA);
        grey = half;
        reduced *= 2.0;
    }
    std::ranges::sort(codes, [](const CodeOnScan& a, const CodeOnScan& b) {
        return a.at.y != b.at.y ? a.at.y < b.at.y : a.at.x < b.at.x;
    });
    return codes;
}

Outcome<std::vector<CodeOnScan>> read_codes(const ScanFile& scan, const Work& work) {
    const int reduction = code_reduction(scan.header());
    return scan.overview(reduction, work).map([&](const cv::Mat& picture) {
        std::vector<CodeOnScan> codes = read_codes(picture);
        for (CodeOnScan& code : codes) {
            code.at = {(code.at.x + 0.5) * reduction - 0.5, (code.at.y + 0.5) * reduction - 0.5};
            code.side *= reduction;
        }
        return codes;
    });
}

} // namespace pithward
