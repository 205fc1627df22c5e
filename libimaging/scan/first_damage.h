#pragma once

#include "libimaging/scan/load_image.h"

#include <mutex>
#include <optional>
#include <string>

namespace pithward::scan {

/// The first damage that was met while a file was read. It stays the one told, whatever is met later. From any thread.
class FirstDamage {
public:
    /// The damage that libvips has just met in the file, unless one was met before. @return the first one
    Fault met_in(const std::string& path) {
        const std::scoped_lock lock(guard_);
        if (!fault_) {
            fault_ = damaged(path);
        }
        return *fault_;
    }
    [[nodiscard]] std::optional<Fault> fault() const {
        const std::scoped_lock lock(guard_);
        return fault_;
    }

private:
    mutable std::mutex guard_;
    std::optional<Fault> fault_;
};

} // namespace pithward::scan
