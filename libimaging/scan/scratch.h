#pragma once

#include "libcore/specimen/outcome.h"
#include "libimaging/scan/vips_image.h"

#include <opencv2/core.hpp>

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
    /// damaged data with the fault that `damaged` makes. `file` is named in faults. `rows` is called with each stretch
    /// of rows, as they come and one at a time, but in another thread: its first row, and the pixels. All but the last
    /// have a multiple of `whole_rows` rows.
    static constexpr int whole_rows = 64;
    using Rows = std::function<void(int first, const cv::Mat& pixels)>;
    [[nodiscard]] static Outcome<Scratch> decode(const std::string& file, VipsImage* from_top,
                                                 const std::function<Fault()>& damaged, const Rows& rows = {});

    /// The pixels; they live as long as this.
    [[nodiscard]] VipsImage* pixels() const { return pixels_.get(); }

    /// Lets go of the memory that what was read so far takes; it is read from the file again when wanted.
    void let_go() const;

private:
    struct Mapping;
    Scratch(std::shared_ptr<const Mapping> mapping, VipsHandle pixels)
        : mapping_(std::move(mapping))
        , pixels_(std::move(pixels)) {}

    std::shared_ptr<const Mapping> mapping_;
    VipsHandle pixels_; ///< Goes before the mapping does.
};

} // namespace pithward::scan
