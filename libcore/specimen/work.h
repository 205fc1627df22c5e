#pragma once

#include <functional>
#include <stop_token>

namespace pithward {

/// How a long call is told to stop, and how it tells how far it is. A default value never stops and reports to nobody.
struct Work {
    std::stop_token stop;
    std::function<void(double done)> progress; ///< Called with the share done, 0 to 1, from the working thread.
    int threads = 0; ///< At most so many threads are used where a call shares its work out; 0: one for each core.

    /// Reports the share done, when anybody listens.
    void report(double done) const {
        if (progress) {
            progress(done);
        }
    }
    [[nodiscard]] bool stopped() const { return stop.stop_requested(); }
    /// Calls `each` with 0 to count - 1, shared out among the threads, and waits for all. It must not throw.
    void share_out(int count, const std::function<void(int)>& each) const;
};

} // namespace pithward
