#include "libimaging/scan/threads.h"

#include <opencv2/core/utility.hpp>

#include <algorithm>
#include <thread>

namespace pithward {

void use_threads(int count) {
    // More threads than cores gain nothing, and the library that runs them would complain.
    const int cores = std::max(1, static_cast<int>(std::thread::hardware_concurrency()));
    cv::setNumThreads(count > 0 ? std::min(count, cores) : cores);
}

} // namespace pithward
