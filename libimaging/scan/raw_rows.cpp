#include "libimaging/scan/raw_rows.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>

namespace pithward::scan {

namespace {

constexpr int pixel_bytes = 3;

/// An open file and where its rows lie. It lives as long as the image that reads from it.
struct RawFile {
    RawFile(const char* path, std::uint64_t first, int columns)
        : file(::open(path, O_RDONLY | O_CLOEXEC))
        , at(first)
        , row_bytes(static_cast<std::uint64_t>(columns) * pixel_bytes) {}
    ~RawFile() {
        if (file >= 0) {
            ::close(file);
        }
    }
    RawFile(const RawFile&) = delete;
    RawFile& operator=(const RawFile&) = delete;

    int file;
    std::uint64_t at;
    std::uint64_t row_bytes;
};

bool read_all(int file, VipsPel* to, std::size_t bytes, std::uint64_t from) {
    while (bytes > 0) {
        const ssize_t got = ::pread(file, to, bytes, static_cast<off_t>(from));
        if (got < 0 && errno == EINTR) {
            continue;
        }
        if (got <= 0) {
            return false;
        }
        to += got;
        from += static_cast<std::uint64_t>(got);
        bytes -= static_cast<std::size_t>(got);
    }
    return true;
}

/// What libvips calls for the pixels of a region.
int read_region(VipsRegion* out, void* /*sequence*/, void* raw_file, void* /*b*/, gboolean* /*stop*/) {
    const RawFile& raw = *static_cast<const RawFile*>(raw_file);
    const VipsRect& valid = out->valid;
    const auto bytes = static_cast<std::size_t>(valid.width) * pixel_bytes;
    const auto left = static_cast<std::uint64_t>(valid.left) * pixel_bytes;
    for (int y = valid.top; y < valid.top + valid.height; ++y) {
        const std::uint64_t from = raw.at + static_cast<std::uint64_t>(y) * raw.row_bytes + left;
        if (!read_all(raw.file, VIPS_REGION_ADDR(out, valid.left, y), bytes, from)) {
            vips_error("pithward", "%s", "the file ends before its pixels do");
            return -1;
        }
    }
    return 0;
}

} // namespace

VipsHandle raw_rows(const Scan& header, std::uint64_t at) {
    auto raw = std::make_unique<RawFile>(header.file.c_str(), at, header.width);
    if (raw->file < 0) {
        vips_error_system(errno, "pithward", "%s", "the file can't be opened");
        return nullptr;
    }
    VipsHandle image(vips_image_new());
    vips_image_init_fields(image.get(), header.width, header.height, pixel_bytes, VIPS_FORMAT_UCHAR, VIPS_CODING_NONE,
                           VIPS_INTERPRETATION_sRGB, 1.0, 1.0);
    RawFile* const kept = raw.release();
    g_object_set_data_full(G_OBJECT(image.get()), "pithward-raw-file", kept,
                           [](gpointer file) { delete static_cast<RawFile*>(file); });
    if (vips_image_pipelinev(image.get(), VIPS_DEMAND_STYLE_ANY, nullptr) != 0 ||
        vips_image_generate(image.get(), nullptr, read_region, nullptr, kept, nullptr) != 0) {
        return nullptr;
    }
    return image;
}

} // namespace pithward::scan
