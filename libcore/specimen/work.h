#pragma once

#include <functional>
#include <stop_token>

namespace pithward {

/// How a long call is told to stop, and how it tells how far it is. A default value never stops and reports to nobody.
struct Work {
    std::stop_token stop;
    std::function<void(double done)> progress; ///< Called with the share done, 0 to 1, from the working thread.

    /// Reports the share done, when anybody listens.
    void report(double done) const {
        if (progress) {
            progress(done);
        }
    }
    [[nodiscard]] bool stopped() const { return stop.stop_requested(); }
};

} // namespace pithward
