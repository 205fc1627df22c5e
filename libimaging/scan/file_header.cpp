#include "libimaging/scan/file_header.h"

#include <algorithm>
#include <fstream>
#include <map>
#include <string_view>
#include <vector>

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

/// The fields of a TIFF's first directory.
class TiffFields {
public:
    explicit TiffFields(Bytes& bytes)
        : bytes_(bytes)
        , big_endian_(bytes.text(0, 1) == "M")
        , wide_(bytes.number(2, 2, big_endian_) == 43) { // 64-bit offsets
        const std::uint64_t at = bytes.number(wide_ ? 8 : 4, wide_ ? 8 : 4, big_endian_);
        const std::uint64_t count = bytes.number(at, wide_ ? 8 : 2, big_endian_);
        for (std::uint64_t i = 0; i < count && i < most_entries && !bytes.ended(); ++i) {
            const std::uint64_t entry = at + (wide_ ? 8 : 2) + i * (wide_ ? 20 : 12);
            fields_.emplace(bytes.number(entry, 2, big_endian_), entry);
        }
    }

    [[nodiscard]] bool has(std::uint64_t tag) const { return fields_.contains(tag); }

    /// All numbers of a field; none where it is not there or holds more than `most`.
    [[nodiscard]] std::vector<std::uint64_t> numbers(std::uint64_t tag, std::uint64_t most) const {
        constexpr std::uint64_t short_type = 3;
        constexpr std::uint64_t long_type = 16;
        const auto field = fields_.find(tag);
        if (field == fields_.end()) {
            return {};
        }
        const std::uint64_t type = bytes_.number(field->second + 2, 2, big_endian_);
        const std::size_t size = type == short_type ? 2 : type == long_type ? 8 : 4;
        const std::uint64_t count = bytes_.number(field->second + 4, wide_ ? 8 : 4, big_endian_);
        const std::uint64_t inside = field->second + (wide_ ? 12 : 8);
        std::vector<std::uint64_t> numbers;
        if (count > most) {
            return numbers;
        }
        const bool fits = count * size <= (wide_ ? 8U : 4U);
        const std::uint64_t at = fits ? inside : bytes_.number(inside, wide_ ? 8 : 4, big_endian_);
        for (std::uint64_t i = 0; i < count && !bytes_.ended(); ++i) {
            numbers.push_back(bytes_.number(at + i * size, size, big_endian_));
        }
        return numbers;
    }

    /// The first number of a field, or what stands for it where it is not there.
    [[nodiscard]] std::uint64_t number(std::uint64_t tag, std::uint64_t otherwise) const {
        const auto all = numbers(tag, most_entries);
        return all.empty() ? otherwise : all.front();
    }

private:
    Bytes& bytes_;
    bool big_endian_;
    bool wide_;
    std::map<std::uint64_t, std::uint64_t> fields_;
};

enum TiffTag : std::uint64_t {
    Width = 256,
    Height = 257,
    BitsPerSample = 258,
    Compression = 259,
    Photometric = 262,
    StripOffsets = 273,
    SamplesPerPixel = 277,
    RowsPerStrip = 278,
    PlanarConfiguration = 284,
    TileWidth = 322,
    SampleFormat = 339,
};

/// Where the pixels begin when nothing was done to them and their strips follow each other.
std::optional<std::uint64_t> raw_pixels(const TiffFields& fields, FileHeader::Size size) {
    constexpr std::uint64_t most_strips = 200'000;
    constexpr std::uint64_t rgb = 2;
    const bool plain = fields.number(Compression, 1) == 1 && fields.number(Photometric, 0) == rgb &&
                       fields.number(SamplesPerPixel, 1) == 3 && fields.number(PlanarConfiguration, 1) == 1 &&
                       fields.number(SampleFormat, 1) == 1 && !fields.has(TileWidth) &&
                       fields.numbers(BitsPerSample, 3) == std::vector<std::uint64_t>{8, 8, 8};
    const auto strips = plain ? fields.numbers(StripOffsets, most_strips) : std::vector<std::uint64_t>();
    const std::uint64_t rows = std::min(fields.number(RowsPerStrip, size.height), size.height);
    if (strips.empty() || rows == 0 || strips.size() != (size.height + rows - 1) / rows) {
        return std::nullopt;
    }
    const std::uint64_t bytes = rows * size.width * 3;
    for (std::size_t i = 1; i < strips.size(); ++i) {
        if (strips[i] != strips[i - 1] + bytes) {
            return std::nullopt;
        }
    }
    return strips.front();
}

void read_tiff(Bytes& bytes, FileHeader& header) {
    const TiffFields fields(bytes);
    if (!fields.has(Width) || !fields.has(Height)) {
        return;
    }
    header.size = FileHeader::Size{fields.number(Width, 0), fields.number(Height, 0)};
    constexpr std::uint64_t most_side = 10'000'000;
    if (header.size->width <= most_side && header.size->height <= most_side && !bytes.ended()) {
        header.raw_at = raw_pixels(fields, *header.size);
        if (bytes.ended()) { // a damaged list of strips: libvips tells what is wrong
            header.raw_at.reset();
        }
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
