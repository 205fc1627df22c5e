#include "libimaging/scan/scan_file.h"
#include "tests/support/only_reading.h"
#include "tests/support/raw_image.h"
#include "tests/support/sanitized.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/stat.h>

#include <array>
#include <filesystem>

namespace pithward::test {
namespace {

using Kind = Written::Kind;

/// One line that names the file, says what is wrong and what to do.
void expect_clear(const Fault& fault, const std::string& file) {
    EXPECT_EQ(fault.where, file);
    EXPECT_FALSE(fault.what.empty());
    EXPECT_FALSE(fault.remedy.empty());
    EXPECT_EQ(fault.line().find('\n'), std::string::npos) << fault.line();
    EXPECT_LT(fault.line().size(), 500U) << fault.line();
}

void expect_refused(const std::string& file, const std::string& what) {
    const auto scan = ScanFile::open(file);
    ASSERT_FALSE(scan.has_value()) << file;
    expect_clear(scan.error(), file);
    EXPECT_NE(scan.error().what.find(what), std::string::npos) << scan.error().line();
}

/// Refused when opened, or when read from end to end.
void expect_refused_at_last(const std::string& file) {
    const auto scan = ScanFile::open(file);
    if (!scan) {
        expect_clear(scan.error(), file);
        return;
    }
    const auto pixels = scan->read({0, 0, scan->header().width, scan->header().height});
    ASSERT_FALSE(pixels.has_value());
    expect_clear(pixels.error(), file);
}

std::string big_endian(std::uint32_t value) {
    return {static_cast<char>(value >> 24U), static_cast<char>(value >> 16U), static_cast<char>(value >> 8U),
            static_cast<char>(value)};
}

/// The check sum of PNG chunks (ISO 3309).
std::uint32_t check_sum(const std::string& bytes) {
    std::uint32_t sum = 0xFFFFFFFFU;
    for (const char byte : bytes) {
        sum ^= static_cast<unsigned char>(byte);
        for (int bit = 0; bit < 8; ++bit) {
            sum = (sum >> 1U) ^ ((sum & 1U) != 0 ? 0xEDB88320U : 0U);
        }
    }
    return ~sum;
}

std::string png_chunk(const std::string& type, const std::string& data) {
    const std::string body = type + data;
    return big_endian(static_cast<std::uint32_t>(data.size())) + body + big_endian(check_sum(body));
}

/// A well-formed PNG header that claims a size, and next to no data.
std::string png_claiming(std::uint32_t width, std::uint32_t height) {
    const std::string packed("\x78\x9c\x63\x60\x00\x00\x00\x02\x00\x01", 10);
    return std::string("\x89PNG\r\n\x1a\n", 8) +
           png_chunk("IHDR", big_endian(width) + big_endian(height) + std::string("\x08\x02\x00\x00\x00", 5)) +
           png_chunk("IDAT", packed) + png_chunk("IEND", "");
}

/// A TIFF header of one strip that claims a size.
std::string tiff_claiming(std::uint32_t width, std::uint32_t height) {
    std::string file("II*\0\x08\0\0\0", 8);
    const auto little = [](std::uint32_t v, int bytes) {
        std::string out;
        for (int i = 0; i < bytes; ++i) {
            out += static_cast<char>(v >> (8U * static_cast<unsigned>(i)));
        }
        return out;
    };
    const std::vector<std::array<std::uint32_t, 3>> tags{{256, 4, width}, {257, 4, height}, {258, 3, 8},
                                                         {259, 3, 1},     {262, 3, 1},      {273, 4, 8},
                                                         {277, 3, 1},     {278, 4, height}, {279, 4, width * height}};
    file += little(static_cast<std::uint32_t>(tags.size()), 2);
    for (const auto& [tag, type, value] : tags) {
        file += little(tag, 2) + little(type, 2) + little(1, 4) + little(value, 4);
    }
    return file + little(0, 4);
}

long peak_kilobytes() {
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return usage.ru_maxrss;
}

TEST(BadScan, IsNoImage) {
    const TemporaryFolder folder;
    expect_refused(folder.write("note.tif", "ring widths, measured by hand\n"), "not an image that can be read");
    expect_refused(folder.write("empty.tif", ""), "is empty");
    expect_refused(folder.write("zeros.png", std::string(4096, '\0')), "not an image");
    expect_refused(folder.write("page.svg", "<svg xmlns='http://www.w3.org/2000/svg' width='90' height='90'/>"),
                   "not an image");
}

TEST(BadScan, IsMissing) {
    const TemporaryFolder folder;
    expect_refused(folder.file("nothing here.tif"), "no such file");
    expect_refused(folder.file("."), "is a folder");
    expect_refused(folder.write("a file", "x") + "/scan.tif", "");
    expect_refused("/dev/null", "no ordinary file");
}

TEST(BadScan, MayNotBeRead) {
    const TemporaryFolder folder;
    write_raw(folder.file("mine.png"), patterned(64, 64, CV_8UC3), {.kind = Kind::Png});
    const ReadOnlyRights rights(folder);
    ASSERT_EQ(::chmod(folder.file("mine.png").c_str(), 0), 0);
    const AsNobody nobody;
    if (!rights.hold()) {
        GTEST_SKIP() << "whoever runs this may read everything, or nobody can reach the folder";
    }
    expect_refused(folder.file("mine.png"), "can't be read");
}

TEST(BadScan, IsTruncated) {
    const TemporaryFolder folder;
    for (const auto& [how, name] :
         {std::pair{Written{.kind = Kind::TiffStrips, .packing = Written::Packing::Lzw}, "lzw"},
          {Written{.kind = Kind::TiffTiles}, "tiles"},
          {Written{.kind = Kind::Png}, "png"},
          {Written{.kind = Kind::Jpeg}, "jpeg"}}) {
        write_raw(folder.file("whole"), patterned(300, 200, CV_8UC3), how);
        const std::string bytes = bytes_of(folder.file("whole"));
        for (const double share : {0.0005, 0.01, 0.1, 0.5, 0.9, 0.99}) {
            SCOPED_TRACE(std::string(name) + " cut to " + std::to_string(share));
            expect_refused_at_last(
                folder.write("cut", bytes.substr(0, static_cast<std::size_t>(share * double(bytes.size())))));
        }
    }
}

TEST(BadScan, GetsShorterWhileItIsOpen) {
    const TemporaryFolder folder;
    const std::string file = folder.file("open.tif");
    write_raw(file, patterned(300, 900, CV_8UC3)); // as it lies: the first to be mapped into memory
    const auto scan = ScanFile::open(file);
    ASSERT_TRUE(scan.has_value());
    ASSERT_TRUE(scan->read({0, 0, 300, 64}).has_value());
    std::filesystem::resize_file(file, std::filesystem::file_size(file) / 2);
    EXPECT_TRUE(scan->read({0, 0, 300, 64}).has_value());
    const auto gone = scan->read({0, 832, 300, 64});
    ASSERT_FALSE(gone.has_value()) << "and the program goes on";
    expect_clear(gone.error(), file);
}

TEST(BadScan, EndsBeforeItsHeader) {
    const TemporaryFolder folder;
    const std::string whole = tiff_claiming(2000, 400); // its header stands at the front
    expect_refused(folder.write("a.tif", whole.substr(0, 40)), "cut short");
    std::string moved = whole;
    moved[5] = '\x7f'; // a header that would stand where the file has ended
    expect_refused(folder.write("b.tif", moved), "cut short");
}

TEST(BadScan, HasColoursInTilesOfTheirOwn) {
    const TemporaryFolder folder;
    write_raw(folder.file("tiles.tif"), patterned(128, 128, CV_8UC3), {.kind = Kind::TiffTiles});
    std::string bytes = bytes_of(folder.file("tiles.tif"));
    const std::string planes("\x1c\x01\x03\0\x01\0\0\0\x01\0", 10); // PlanarConfiguration, 1: together
    ASSERT_NE(bytes.find(planes), std::string::npos);
    bytes[bytes.find(planes) + 8] = '\x02';
    const auto scan = ScanFile::open(folder.write("planes.tif", bytes));
    const auto pixels = scan.and_then([](const ScanFile& file) { return file.read({0, 0, 128, 128}); });
    ASSERT_FALSE(pixels.has_value());
    expect_clear(pixels.error(), folder.file("planes.tif"));
    EXPECT_NE(pixels.error().what.find("separate tiles"), std::string::npos) << pixels.error().line();
}

TEST(BadScan, AHeaderThatClaimsAnAbsurdSizeAllocatesNothing) {
    const TemporaryFolder folder;
    const long before = peak_kilobytes();
    for (const std::uint32_t side : {1'000'000U, 999'999U, 2'000'000'000U}) {
        SCOPED_TRACE(side);
        expect_refused_at_last(folder.write("huge.png", png_claiming(side, side)));
        expect_refused_at_last(folder.write("huge.tif", tiff_claiming(side, side)));
    }
    // Within what we accept, but with hardly any data behind it: refused before anything is decoded.
    expect_refused(folder.write("wide.tif", tiff_claiming(40'000, 38'000)), "bytes");
    expect_refused(folder.write("large.tif", tiff_claiming(60'000, 40'000)), "more than");
    if (!sanitized) {
        EXPECT_LT(peak_kilobytes() - before, 64 * 1024);
    }
}

TEST(BadScan, IsTooLargeToBeDecodedInPasses) {
    const TemporaryFolder folder;
    std::string interlaced = png_claiming(30'000, 20'000);
    interlaced.replace(8, 25,
                       png_chunk("IHDR", big_endian(30'000) + big_endian(20'000) + std::string("\x08\x02\0\0\x01", 5)));
    expect_refused(folder.write("passes.png", interlaced + std::string(1'000'000, '\0')), "progressive");
}

TEST(BadScan, IsOfNoOrTinySize) {
    const TemporaryFolder folder;
    expect_refused_at_last(folder.write("none.png", png_claiming(0, 100)));
    expect_refused_at_last(folder.write("none.tif", tiff_claiming(0, 0)));
    expect_refused(folder.write("no width.tif", tiff_claiming(0, 40)), "0 x 40 pixels");
    expect_refused(folder.write("no height.png", png_claiming(100, 0)), "100 x 0 pixels");
    write_raw(folder.file("jpeg"), patterned(64, 64, CV_8UC3), {.kind = Kind::Jpeg});
    std::string jpeg = bytes_of(folder.file("jpeg"));
    jpeg.replace(jpeg.find("\xFF\xC0") + 5, 2, 2, '\0');
    expect_refused(folder.write("no height.jpg", jpeg), "64 x 0 pixels");
    write_raw(folder.file("tiny.png"), patterned(8, 8, CV_8UC3), {.kind = Kind::Png});
    expect_refused(folder.file("tiny.png"), "only 8 x 8 pixels");
}

TEST(BadScan, HasAColourSpaceThatCantBeUsed) {
    const TemporaryFolder folder;
    for (const Kind kind : {Kind::TiffStrips, Kind::Jpeg}) {
        write_raw(folder.file("ink"), patterned(64, 64, CV_8UC4), {.kind = kind, .cmyk = true});
        expect_refused(folder.file("ink"), "colour space");
    }
}

TEST(BadScan, HasPixelsThatAreNeither8Nor16Bit) {
    const TemporaryFolder folder;
    write_raw(folder.file("float.tif"), cv::Mat(64, 64, CV_32FC3, cv::Scalar::all(0.5)));
    expect_refused(folder.file("float.tif"), "neither 8 nor 16 bit");
}

} // namespace
} // namespace pithward::test
