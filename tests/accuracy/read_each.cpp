#include "tests/accuracy/read_each.h"

#include "libcore/measure/measure.h"
#include "libimaging/boundary/propose_reading.h"
#include "libimaging/scan/threads.h"

#include <algorithm>
#include <atomic>
#include <cstdio>
#include <thread>
#include <utility>
#include <vector>

namespace pithward::accuracy {

namespace {

Outcome<ReadCore> read(const Case& one) {
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
    auto reading = propose_reading(*scan, request);
    if (!reading) {
        return tl::unexpected(reading.error());
    }
    auto series = measure(*reading);
    if (!series) {
        return tl::unexpected(series.error());
    }
    return ReadCore{std::move(*reading), std::move(*series)};
}

} // namespace

void read_each(std::span<const Case> cases, const std::function<void(std::size_t, const Outcome<ReadCore>&)>& with) {
    use_threads(1);
    std::atomic<std::size_t> next{0};
    const auto work = [&] {
        for (std::size_t i = next++; i < cases.size(); i = next++) {
            const Outcome<ReadCore> core = read(cases[i]);
            if (!core) {
                std::fprintf(stderr, "%s: %s\n", cases[i].truth.name.c_str(), core.error().line().c_str());
            }
            with(i, core);
        }
    };
    std::vector<std::jthread> workers;
    for (unsigned k = std::max(1U, std::thread::hardware_concurrency()); k > 0; --k) {
        workers.emplace_back(work);
    }
}

} // namespace pithward::accuracy
