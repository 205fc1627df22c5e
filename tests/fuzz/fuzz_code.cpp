#include "libcore/field/core_code.h"
#include "libcore/field/scan_place.h"
#include "libimaging/code/code_reader.h"
#include "tests/fuzz/round_trip.h"

#include <opencv2/core.hpp>

#include <string>

namespace {

using namespace pithward;

void hold_text(const std::string& text) {
    if (const auto names = field::names_in_code(text)) {
        fuzz::require(!names->site.empty() && !names->core.empty(), "a code without a name");
        fuzz::require(field::names_in_code(field::core_code(*names)) == names, "other names: " + text);
    }
    if (const auto place = field::scan_place_from(text)) {
        const auto again = field::scan_place_from(field::text_of(*place));
        fuzz::require(again == place, "another place: " + text);
    }
}

} // namespace

/// A picture: its breadth, how often each pixel stands beside itself, then its pixels. The same bytes are a text too.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    constexpr std::size_t head = 2;
    constexpr std::uint8_t most_times = 3;
    if (size <= head || size > fuzz::most_bytes) {
        return 0;
    }
    hold_text(std::string(reinterpret_cast<const char*>(data), size));
    const int width = data[0] + 1;
    const int times = data[1] % most_times + 1;
    const int height = static_cast<int>(size - head) / width;
    if (height == 0) {
        return 0;
    }
    cv::Mat picture(height * times, width * times, CV_8UC1);
    for (int y = 0; y < picture.rows; ++y) {
        for (int x = 0; x < picture.cols; ++x) {
            picture.at<std::uint8_t>(y, x) = data[head + static_cast<std::size_t>(y / times * width + x / times)];
        }
    }
    for (const CodeOnScan& code : read_codes(picture)) {
        fuzz::require(!code.text.empty() && code.side > 0.0, "a code without text or size");
        fuzz::require(code.at.x > -code.side && code.at.x < picture.cols + code.side && code.at.y > -code.side &&
                          code.at.y < picture.rows + code.side,
                      "a code outside of the picture");
        hold_text(code.text);
    }
    return 0;
}
