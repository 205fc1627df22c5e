#include "libimaging/scan/vips_image.h"

#include <opencv2/core.hpp>

#include <mutex>

namespace pithward::scan {

int type_of(VipsImage* image) {
    return vips_image_get_format(image) == VIPS_FORMAT_USHORT ? CV_16UC3 : CV_8UC3;
}

bool start_vips() {
    static std::once_flag once;
    static bool started = false;
    std::call_once(once, [] {
        started = vips_init("pithward") == 0;
        if (started) {
            vips_block_untrusted_set(TRUE);
            vips_cache_set_max(0);
            // With threads of its own, version 8.14 now and then gives a JPEG file that is cut short as if it were
            // whole. Regions are read in several threads anyway (scan_file.cpp).
            vips_concurrency_set(1);
            // Complaints come back as values; libvips need not print them too.
            g_log_set_handler(
                "VIPS", static_cast<GLogLevelFlags>(G_LOG_LEVEL_MASK), [](auto...) {}, nullptr);
        }
    });
    return started;
}

std::string vips_complaint() {
    std::string text = vips_error_buffer();
    vips_error_clear();
    const auto end = text.find_last_not_of(" \n\r");
    text.resize(end == std::string::npos ? 0 : end + 1);
    for (char& c : text) {
        if (c == '\n' || c == '\r') {
            c = ' ';
        }
    }
    return text.substr(0, 200);
}

} // namespace pithward::scan
