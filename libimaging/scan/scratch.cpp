#include "libimaging/scan/scratch.h"

#include "libimaging/scan/beside.h"

#include <fcntl.h>
#include <sys/mman.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cmath>
#include <cstdlib>
#include <cstring>
#include <utility>

namespace pithward::scan {

namespace {

std::string scratch_folder() {
    const char* named = g_getenv("TMPDIR");
    return named != nullptr && *named != '\0' ? named : "/var/tmp";
}

/// A file that has no name, -1 where there can be none.
int nameless_file(const std::string& folder) {
#ifdef O_TMPFILE
    if (const int file = ::open(folder.c_str(), O_TMPFILE | O_RDWR | O_CLOEXEC, 0600); file >= 0) {
        return file;
    }
#endif
    std::string name = folder + "/pithward-XXXXXX"; // not every file system knows of nameless files
    const int file = ::mkostemp(name.data(), O_CLOEXEC);
    if (file >= 0) {
        ::unlink(name.c_str());
    }
    return file;
}

/// Rows that are decoded. A region belongs to the thread that made it, but any may read it.
struct Stretch {
    VipsRegionHandle region;
    VipsRect part{};
};

} // namespace

struct Scratch::Mapping {
    explicit Mapping(std::size_t bytes)
        : size(bytes) {
        const int file = nameless_file(scratch_folder());
        // Room is taken now: a disk that fills up later would end the process.
        error = file < 0 ? errno : ::posix_fallocate(file, 0, static_cast<off_t>(bytes));
        if (error == 0) {
            data = ::mmap(nullptr, size, PROT_READ | PROT_WRITE, MAP_SHARED, file, 0);
            error = data == MAP_FAILED ? errno : 0;
        }
        if (file >= 0) {
            ::close(file);
        }
    }
    ~Mapping() {
        if (error == 0) {
            ::munmap(data, size);
        }
    }
    Mapping(const Mapping&) = delete;
    Mapping& operator=(const Mapping&) = delete;

    std::size_t size;
    void* data = nullptr;
    int error = 0;
};

void Scratch::let_go() const {
    ::madvise(mapping_->data, mapping_->size, MADV_DONTNEED);
}

Outcome<Scratch> Scratch::decode(const std::string& file, VipsImage* from_top, const std::function<Fault()>& damaged,
                                 const Rows& on_rows) {
    const int width = vips_image_get_width(from_top);
    const int height = vips_image_get_height(from_top);
    const std::size_t row = VIPS_IMAGE_SIZEOF_LINE(from_top);
    const auto mapping = std::make_shared<Mapping>(row * static_cast<std::size_t>(height));
    if (mapping->error != 0) {
        const double gigabytes = std::ceil(static_cast<double>(mapping->size) / 1e9);
        return fail(file,
                    "reading it takes " + std::to_string(static_cast<int>(gigabytes)) + " GB of scratch space in " +
                        scratch_folder() + ": " + std::strerror(mapping->error),
                    "make room, or name another folder in TMPDIR; a TIFF saved in tiles needs none");
    }
    constexpr std::size_t stretch_bytes = 8'000'000;
    const int rows = std::max(1, static_cast<int>(stretch_bytes / row / whole_rows)) * whole_rows;
    const auto take = [&](const Stretch& from) {
        char* const to = static_cast<char*>(mapping->data) + row * static_cast<std::size_t>(from.part.top);
        for (int k = 0; k < from.part.height; ++k) {
            std::memcpy(to + row * static_cast<std::size_t>(k),
                        VIPS_REGION_ADDR(from.region.get(), 0, from.part.top + k), row);
        }
        if (on_rows) {
            on_rows(from.part.top, cv::Mat(from.part.height, width, type_of(from_top), to, row));
        }
        ::madvise(mapping->data, mapping->size, MADV_DONTNEED); // it is in the file; it need not stay in memory too
    };
    Stretch taken;
    std::future<void> taking; // one stretch is put away while the next is decoded
    for (int y = 0; y < height; y += rows) {
        Stretch next{VipsRegionHandle(vips_region_new(from_top)), {0, y, width, std::min(rows, height - y)}};
        if (!next.region || vips_region_prepare(next.region.get(), &next.part) != 0) {
            return tl::unexpected(damaged());
        }
        if (taking.valid()) {
            taking.get();
        }
        taken = std::move(next);
        taking = beside([&] { take(taken); });
    }
    if (taking.valid()) {
        taking.get();
    }
    VipsHandle pixels(vips_image_new_from_memory(mapping->data, mapping->size, width, height,
                                                 vips_image_get_bands(from_top), vips_image_get_format(from_top)));
    if (!pixels) {
        return tl::unexpected(damaged());
    }
    return Scratch(mapping, std::move(pixels));
}

} // namespace pithward::scan
