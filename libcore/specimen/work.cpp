#include "libcore/specimen/work.h"

#include <algorithm>
#include <atomic>
#include <thread>
#include <vector>

namespace pithward {

void Work::share_out(int count, const std::function<void(int)>& each) const {
    const int cores = std::max(1, static_cast<int>(std::thread::hardware_concurrency()));
    const int helpers = std::min(count, threads > 0 ? std::min(threads, cores) : cores) - 1;
    std::atomic<int> next = 0;
    const auto go_on = [&] {
        for (int k = next++; k < count; k = next++) {
            each(k);
        }
    };
    std::vector<std::jthread> others; // joined at the end of this call
    others.reserve(static_cast<std::size_t>(std::max(0, helpers)));
    for (int k = 0; k < helpers; ++k) {
        others.emplace_back(go_on);
    }
    go_on();
}

} // namespace pithward
