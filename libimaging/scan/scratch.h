#pragma once

#include "libcore/specimen/outcome.h"
#include "libimaging/scan/vips_image.h"

#include <functional>
#include <memory>
#include <string>

namespace pithward::scan {

/// The pixels of an image that can only be decoded from top to bottom, decoded once into a nameless file: it is gone
/// with the process, however that ends. In the folder that TMPDIR names, else in /var/tmp: it may take several GB, and
/// on many machines /tmp lies in memory.
class Scratch {
public:
    /// Decodes an image (RGB of 8 or 16 bit, opened to be read from the top). Fails where there is no room, and on
    /// damaged data with the fault that `damaged` makes. `file` is named in faults.
    [[nodiscard]] static Outcome<Scratch> decode(const std::string& file, VipsImage* from_top,
                                                 const std::function<Fault()>& damaged);

    /// The pixels; they live as long as this.
    [[nodiscard]] VipsImage* pixels() const { return pixels_.get(); }

private:
    struct Mapping;
    Scratch(std::shared_ptr<const Mapping> mapping, VipsHandle pixels)
        : mapping_(std::move(mapping))
        , pixels_(std::move(pixels)) {}

    std::shared_ptr<const Mapping> mapping_;
    VipsHandle pixels_; ///< Goes before the mapping does.
};

} // namespace pithward::scan
