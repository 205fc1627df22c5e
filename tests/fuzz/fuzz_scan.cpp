#include "libimaging/scan/scan_file.h"
#include "libimaging/scan/threads.h"
#include "tests/fuzz/round_trip.h"

#include <unistd.h>

#include <filesystem>
#include <fstream>

namespace {

using namespace pithward;

/// Larger pictures, which a small file can claim to be, only cost time.
constexpr std::int64_t most_pixels = 4'000'000;

/// The file that each input is written to; gone at the end.
struct ScratchFile {
    std::string path = (std::filesystem::temp_directory_path() / ("fuzz scan " + std::to_string(getpid()))).string();

    ScratchFile() = default;
    ScratchFile(const ScratchFile&) = delete;
    ScratchFile& operator=(const ScratchFile&) = delete;
    ~ScratchFile() {
        std::error_code ignored;
        std::filesystem::remove(path, ignored);
    }
};

void require_clear(const Fault& fault, const std::string& file) {
    fuzz::require(fault.where == file, "a refusal that names another file: " + fault.line());
    fuzz::require(!fault.what.empty() && !fault.remedy.empty(), "a refusal without remedy");
    fuzz::require(fault.line().find('\n') == std::string::npos, "a refusal of several lines");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size > fuzz::most_bytes) {
        return 0;
    }
    static const bool once = (use_threads(1), true);
    static const ScratchFile scratch;
    const std::string& file = scratch.path;
    fuzz::require(once, "threads");
    std::ofstream(file, std::ios::binary)
        .write(reinterpret_cast<const char*>(data), static_cast<std::streamsize>(size));
    const auto scan = ScanFile::open(file);
    if (!scan) {
        require_clear(scan.error(), file);
        return 0;
    }
    const Scan& header = scan->header();
    fuzz::require(header.width > 0 && header.height > 0, "a scan without pixels");
    if (const auto calibration = believed_calibration(header, std::nullopt); !calibration) {
        require_clear(calibration.error(), file);
    }
    if (std::int64_t{header.width} * header.height > most_pixels) {
        return 0;
    }
    const auto pixels = scan->read({header.width / 3, header.height / 3, 20, 20});
    if (!pixels) {
        require_clear(pixels.error(), file);
        return 0;
    }
    fuzz::require(pixels->channels() == 3, "pixels that are no RGB");
    return 0;
}
