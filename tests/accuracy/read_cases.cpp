#include "tests/accuracy/read_cases.h"

#include "libcore/measure/measure.h"
#include "libimaging/boundary/propose_reading.h"
#include "libimaging/scan/threads.h"

#include <algorithm>
#include <atomic>
#include <cstdio>
#include <thread>

namespace pithward::accuracy {

namespace {

Outcome<CaseScore> read(const Case& one) {
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
    const auto reading = propose_reading(*scan, request);
    if (!reading) {
        return tl::unexpected(reading.error());
    }
    return measure(*reading).map([&](const RingSeries& series) { return case_score(one.truth, *reading, series); });
}

CaseScore read_or_tell(const Case& one) {
    Outcome<CaseScore> score = read(one);
    if (!score) {
        std::fprintf(stderr, "%s: %s\n", one.truth.name.c_str(), score.error().line().c_str());
        return unread(one.truth);
    }
    return std::move(*score);
}

} // namespace

std::vector<CaseScore> read_cases(std::span<const Case> cases) {
    use_threads(1);
    std::vector<CaseScore> scores(cases.size());
    std::atomic<std::size_t> next{0};
    const auto work = [&] {
        for (std::size_t i = next++; i < cases.size(); i = next++) {
            scores[i] = read_or_tell(cases[i]);
        }
    };
    {
        std::vector<std::jthread> workers;
        for (unsigned k = std::max(1U, std::thread::hardware_concurrency()); k > 0; --k) {
            workers.emplace_back(work);
        }
    }
    return scores;
}

} // namespace pithward::accuracy
