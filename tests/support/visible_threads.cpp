// Linked into tests under the thread sanitizer. OpenCV's own pool is not compiled with it, so it would see neither
// where our loops begin and end nor, were the pool's complaints suppressed, what they do wrong. Threads that it does
// see run them here.
#include <opencv2/core/parallel/parallel_backend.hpp>

#include <algorithm>
#include <atomic>
#include <memory>
#include <thread>
#include <utility>
#include <vector>

namespace pithward::test {
namespace {

thread_local int number_of_this_thread = 0;

/// Shares the tasks out with no order between them but that of their begin and end.
class VisibleThreads : public cv::parallel::ParallelForAPI {
public:
    void parallel_for(int tasks, FN_parallel_for_body_cb_t body, void* data) override {
        std::atomic<int> next = 0;
        const auto work = [&](int number) {
            number_of_this_thread = number;
            for (int i = next.fetch_add(1, std::memory_order_relaxed); i < tasks;
                 i = next.fetch_add(1, std::memory_order_relaxed)) {
                body(i, i + 1, data);
            }
        };
        std::vector<std::jthread> threads;
        for (int number = 1; number < std::min(threads_, tasks); ++number) {
            threads.emplace_back(work, number);
        }
        work(0);
    }

    [[nodiscard]] int getThreadNum() const override { return number_of_this_thread; }
    [[nodiscard]] int getNumThreads() const override { return threads_; }
    int setNumThreads(int count) override { return std::exchange(threads_, count > 0 ? count : usual); }
    [[nodiscard]] const char* getName() const override { return "visible threads"; }

private:
    static constexpr int usual = 4; // more than cores, so that they get in each other's way

    int threads_ = usual;
};

const bool installed = [] {
    cv::parallel::setParallelForBackend(std::make_shared<VisibleThreads>(), false);
    return true;
}();

} // namespace
} // namespace pithward::test
