// What reading a core again costs on the bench when one point of its path was moved, with and without the straightened
// stretches that are kept: see docs/speed.md. Usage: moved_point FILE, a scan of long_scan; one thread.
#include "app/bench/model/piece_shelf.h"
#include "libimaging/boundary/propose_reading.h"
#include "libimaging/scan/scan_file.h"
#include "libimaging/scan/threads.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdio>
#include <vector>

namespace {

using namespace pithward;

constexpr int repeats = 9;

double median_of(std::vector<double> values) {
    std::ranges::nth_element(values, values.begin() + repeats / 2);
    return values[repeats / 2];
}

/// Seconds, and whether there was a reading.
double seconds(const ScanFile& scan, const ReadingRequest& request, KeptPieces* kept, bool& read) {
    const auto begin = std::chrono::steady_clock::now();
    read = propose_reading(scan, request, {}, kept).has_value() && read;
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

} // namespace

int main(int argc, char** argv) {
    if (argc != 2) {
        std::fprintf(stderr, "usage: moved_point FILE\n");
        return 2;
    }
    use_threads(1);
    const auto scan = ScanFile::open(argv[1]);
    const auto calibration = scan ? believed_calibration(scan->header(), std::nullopt) : tl::unexpected(scan.error());
    if (!calibration) {
        std::fprintf(stderr, "%s\n", calibration.error().line().c_str());
        return 2;
    }
    const Scan& header = scan->header();
    const double y = 0.5 * header.height;
    bool read = true;
    for (const double share : std::array{0.25, 0.5, 0.75, 0.95}) {
        ReadingRequest request;
        request.scan_name = "strip";
        request.calibration = *calibration;
        request.path = {{0.01 * header.width, y}, {share * header.width, y}, {0.985 * header.width, y}};
        request.wood = WoodType::Conifer;
        bench::PieceShelf shelf;
        (void)seconds(*scan, request, &shelf, read);
        std::vector<double> without;
        std::vector<double> with;
        for (int run = 0; run < repeats; ++run) {
            request.path[1].y += run % 2 == 0 ? 3.0 + run : -2.0 - run;
            without.push_back(seconds(*scan, request, nullptr, read));
            with.push_back(seconds(*scan, request, &shelf, read));
        }
        std::printf("point moved at %2.0f %% of the path, medians of %d: %.3f s without, %.3f s with what was kept\n",
                    100.0 * share, repeats, median_of(without), median_of(with));
    }
    return read ? 0 : 1;
}
