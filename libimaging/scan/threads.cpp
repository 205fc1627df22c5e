#include "libimaging/scan/threads.h"

#include "libimaging/scan/vips_image.h"

#include <opencv2/core/utility.hpp>

#include <algorithm>
#include <thread>

namespace pithward {

void use_threads(int count) {
    const int threads = count > 0 ? count : std::max(1, static_cast<int>(std::thread::hardware_concurrency()));
    cv::setNumThreads(threads);
    if (scan::start_vips()) {
        vips_concurrency_set(threads);
    }
}

} // namespace pithward
