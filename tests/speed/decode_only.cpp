// Decodes every pixel of a scan through libvips into memory and does nothing else: what measuring is compared with.
// Usage: decode_only FILE
#include <vips/vips.h>

#include <cstdio>

int main(int argc, char** argv) {
    if (argc != 2 || vips_init(argv[0]) != 0) {
        std::fprintf(stderr, "usage: decode_only FILE\n");
        return 2;
    }
    VipsImage* image = vips_image_new_from_file(argv[1], "access", VIPS_ACCESS_SEQUENTIAL, nullptr);
    std::size_t size = 0;
    void* pixels = image == nullptr ? nullptr : vips_image_write_to_memory(image, &size);
    if (pixels == nullptr) {
        std::fprintf(stderr, "%s", vips_error_buffer());
        return 2;
    }
    g_free(pixels);
    g_object_unref(image);
    return 0;
}
