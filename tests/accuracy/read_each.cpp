#include "tests/accuracy/read_each.h"

#include "libcore/measure/measure.h"
#include "libimaging/boundary/propose_reading.h"
#include "libimaging/scan/threads.h"
#include "tests/accuracy/kept_reading.h"

#include <algorithm>
#include <atomic>
#include <cstdio>
#include <filesystem>
#include <string>
#include <thread>
#include <utility>
#include <vector>

namespace pithward::accuracy {

namespace {

Outcome<Reading> read_scan(const Case& one) {
    const auto scan = ScanFile::open(one.file);
    if (!scan) {
        return tl::unexpected(scan.error());
    }
    const auto calibration = believed_calibration(scan->header(), std::nullopt);
    if (!calibration) {
        return tl::unexpected(calibration.error());
    }
    ReadingRequest request;
    request.scan_name = scan->header().file;
    request.calibration = *calibration;
    request.path = one.truth.path;
    request.wood = one.truth.wood;
    request.last_year = one.truth.last_complete_ring_year;
    return propose_reading(*scan, request);
}

Outcome<ReadCore> read(const Case& one, const std::string& kept_folder) {
    const auto file = std::filesystem::path(kept_folder) / (one.truth.name + ".reading.json");
    auto kept = kept_folder.empty() ? std::nullopt : kept_reading(file);
    auto reading = kept ? Outcome<Reading>(std::move(*kept)) : read_scan(one);
    if (!reading) {
        return tl::unexpected(reading.error());
    }
    if (!kept_folder.empty() && !kept && !keep_reading(file, *reading)) {
        std::fprintf(stderr, "%s: could not be kept\n", file.c_str());
    }
    auto series = measure(*reading);
    if (!series) {
        return tl::unexpected(series.error());
    }
    return ReadCore{std::move(*reading), std::move(*series)};
}

} // namespace

void read_each(std::span<const Case> cases, const std::function<void(std::size_t, const Outcome<ReadCore>&)>& with,
               const ReadingWay& way) {
    use_threads(1);
    std::atomic<std::size_t> next{0};
    const auto work = [&] {
        for (std::size_t i = next++; i < cases.size(); i = next++) {
            const Outcome<ReadCore> core = read(cases[i], way.kept_folder);
            if (!core) {
                std::fprintf(stderr, "%s: %s\n", cases[i].truth.name.c_str(), core.error().line().c_str());
            }
            with(i, core);
        }
    };
    std::vector<std::jthread> workers;
    const unsigned threads = way.threads > 0 ? way.threads : std::max(1U, std::thread::hardware_concurrency());
    for (unsigned k = threads; k > 0; --k) {
        workers.emplace_back(work);
    }
}

} // namespace pithward::accuracy
