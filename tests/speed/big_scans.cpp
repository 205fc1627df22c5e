// Makes one large scan in the kinds of file that behave differently: tiled TIFF, TIFF in strips, JPEG, PNG.
// Usage: big_scans SCAN FOLDER [WIDTH HEIGHT]; the scan is repeated until it fills 20,000 x 12,000 pixels.
#include <vips/vips.h>

#include <cstdio>
#include <cstdlib>
#include <string>

namespace {

constexpr int usual_width = 20'000;
constexpr int usual_height = 12'000;

bool saved(VipsImage* image, const std::string& folder) {
    const auto path = [&](const char* name) { return folder + "/" + name; };
    return vips_tiffsave(image, path("tiled.tif").c_str(), "tile", TRUE, "tile_width", 512, "tile_height", 512,
                         "compression", VIPS_FOREIGN_TIFF_COMPRESSION_LZW, nullptr) == 0 &&
           vips_tiffsave(image, path("raw.tif").c_str(), nullptr) == 0 &&
           vips_tiffsave(image, path("strips.tif").c_str(), "compression", VIPS_FOREIGN_TIFF_COMPRESSION_LZW,
                         nullptr) == 0 &&
           vips_jpegsave(image, path("scan.jpg").c_str(), "Q", 92, nullptr) == 0 &&
           vips_pngsave(image, path("scan.png").c_str(), "compression", 4, nullptr) == 0;
}

} // namespace

int main(int argc, char** argv) {
    if ((argc != 3 && argc != 5) || vips_init(argv[0]) != 0) {
        std::fprintf(stderr, "usage: big_scans SCAN FOLDER [WIDTH HEIGHT]\n");
        return 2;
    }
    const int width = argc == 5 ? std::atoi(argv[3]) : usual_width;
    const int height = argc == 5 ? std::atoi(argv[4]) : usual_height;
    VipsImage* scan = vips_image_new_from_file(argv[1], nullptr);
    VipsImage* many = nullptr;
    VipsImage* whole = nullptr;
    const bool done = scan != nullptr &&
                      vips_replicate(scan, &many, width / vips_image_get_width(scan) + 1,
                                     height / vips_image_get_height(scan) + 1, nullptr) == 0 &&
                      vips_extract_area(many, &whole, 0, 0, width, height, nullptr) == 0 && saved(whole, argv[2]);
    if (!done) {
        std::fprintf(stderr, "%s", vips_error_buffer());
        return 2;
    }
    return 0;
}
