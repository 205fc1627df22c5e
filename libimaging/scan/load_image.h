#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/scan.h"
#include "libimaging/scan/vips_image.h"

#include <string>

namespace pithward::scan {

/// An image whose header was read and found usable.
struct LoadedImage {
    Scan header;
    VipsHandle pixels; ///< RGB of 8 or 16 bit; decoded when first needed.
    /// The file can only be decoded from top to bottom and does not fit the memory allowed for it: what is asked for
    /// here and there has to come from a `Scratch`, not from `pixels`.
    bool needs_scratch = false;
    bool in_regions = false; ///< Any place costs only itself; else the file is decoded from the top.
    bool one_by_one = false; ///< An open image decodes its tiles one after the other, whatever the threads.
    bool shrinks = false;    ///< Decoding it at a half, a quarter or an eighth costs much less than as a whole.
};

/// Opens a file whose pixels are wanted here and there, up to `most_memory` bytes of them in memory. Reads the header
/// only; fails, naming the file, on what is no scan.
[[nodiscard]] Outcome<LoadedImage> load_image(const std::string& path, std::int64_t most_memory);

/// Opens the same file anew, to be read once from top to bottom without scratch space.
[[nodiscard]] Outcome<VipsHandle> load_top_to_bottom(const std::string& path);

/// The same of a file that `shrinks`, decoded smaller by 2, 4 or 8.
[[nodiscard]] Outcome<VipsHandle> load_shrunk(const std::string& path, int by);

/// The fault of a file whose pixels can't be decoded, with what libvips says of it.
[[nodiscard]] Fault damaged(const std::string& path);

} // namespace pithward::scan
