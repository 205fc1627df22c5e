#include "libimaging/scan/file_header.h"

#include <fstream>
#include <string_view>

namespace pithward::scan {

namespace {

/// A file read here and there. Reading beyond its end gives zeros, and is remembered.
class Bytes {
public:
    explicit Bytes(const std::string& path)
        : file_(path, std::ios::binary) {}

    [[nodiscard]] bool ended() const { return ended_; }

    std::string text(std::uint64_t at, std::size_t count) {
        std::string out(count, '\0');
        file_.clear();
        file_.seekg(static_cast<std::streamoff>(at & 0x7FFF'FFFF'FFFF'FFFFU));
        file_.read(out.data(), static_cast<std::streamsize>(count));
        ended_ = ended_ || !file_;
        return out;
    }

    std::uint64_t number(std::uint64_t at, std::size_t count, bool big_endian) {
        const std::string bytes = text(at, count);
        std::uint64_t value = 0;
        for (std::size_t i = 0; i < count; ++i) {
            const char byte = bytes[big_endian ? i : count - 1 - i];
            value = (value << 8U) | static_cast<unsigned char>(byte);
        }
        return value;
    }

private:
    std::ifstream file_;
    bool ended_ = false;
};

constexpr std::uint64_t most_entries = 4096; ///< Of a directory or of chunks: more are not looked at.

void read_tiff(Bytes& bytes, FileHeader& header) {
    constexpr std::uint64_t width_tag = 256;
    constexpr std::uint64_t height_tag = 257;
    constexpr std::uint64_t short_type = 3;
    const bool big_endian = bytes.text(0, 1) == "M";
    const bool wide = bytes.number(2, 2, big_endian) == 43; // 64-bit offsets
    const std::size_t word = wide ? 8 : 4;
    const std::uint64_t at = bytes.number(wide ? 8 : 4, word, big_endian);
    const std::uint64_t count = bytes.number(at, wide ? 8 : 2, big_endian);
    FileHeader::Size size;
    int found = 0;
    for (std::uint64_t i = 0; i < count && i < most_entries && !bytes.ended(); ++i) {
        const std::uint64_t entry = at + (wide ? 8 : 2) + i * (wide ? 20 : 12);
        const std::uint64_t tag = bytes.number(entry, 2, big_endian);
        if (tag != width_tag && tag != height_tag) {
            continue;
        }
        const std::size_t bytes_of_value = bytes.number(entry + 2, 2, big_endian) == short_type ? 2 : 4;
        (tag == width_tag ? size.width : size.height) =
            bytes.number(entry + (wide ? 12 : 8), bytes_of_value, big_endian);
        ++found;
    }
    if (found == 2) {
        header.size = size;
    }
}

void read_png(Bytes& bytes, FileHeader& header) {
    header.size = {bytes.number(16, 4, true), bytes.number(20, 4, true)};
    header.in_passes = bytes.number(28, 1, true) != 0;
    constexpr std::uint64_t around_data = 12; // length, type, check sum
    std::uint64_t at = 8;
    for (std::uint64_t i = 0; i < most_entries && !bytes.ended(); ++i) {
        const std::string type = bytes.text(at + 4, 4);
        if (type == "pHYs") {
            header.png_resolution = bytes.number(at + 16, 1, true) == 1; // the unit is the metre
        }
        if (type == "pHYs" || type == "IDAT" || type == "IEND") {
            return;
        }
        at += bytes.number(at, 4, true) + around_data;
    }
}

void read_jpeg(Bytes& bytes, FileHeader& header) {
    std::uint64_t at = 2;
    for (std::uint64_t i = 0; i < most_entries && !bytes.ended(); ++i) {
        const std::uint64_t marker = bytes.number(at, 2, true);
        const bool frame =
            marker >= 0xFFC0 && marker <= 0xFFCF && marker != 0xFFC4 && marker != 0xFFC8 && marker != 0xFFCC;
        if (frame) {
            header.size = {bytes.number(at + 7, 2, true), bytes.number(at + 5, 2, true)};
            header.in_passes = (marker & 3U) == 2; // the third of each four kinds of frame
        }
        if (frame || marker < 0xFF01 || marker == 0xFFDA) {
            return;
        }
        at += 2 + bytes.number(at + 2, 2, true);
    }
}

} // namespace

FileHeader file_header(const std::string& path) {
    using namespace std::string_literals;
    Bytes bytes(path);
    FileHeader header;
    const std::string magic = bytes.text(0, 4);
    if (magic == "II*\0"s || magic == "MM\0*"s || magic == "II+\0"s || magic == "MM\0+"s) {
        header.kind = FileHeader::Kind::Tiff;
        read_tiff(bytes, header);
    } else if (magic == "\x89PNG") {
        header.kind = FileHeader::Kind::Png;
        read_png(bytes, header);
    } else if (magic.starts_with("\xFF\xD8\xFF")) {
        header.kind = FileHeader::Kind::Jpeg;
        read_jpeg(bytes, header);
    }
    header.cut_short = header.kind != FileHeader::Kind::Other && bytes.ended();
    return header;
}

} // namespace pithward::scan
