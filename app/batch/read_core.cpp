#include "app/batch/read_core.h"

#include "libcore/measure/measure.h"
#include "libimaging/boundary/propose_reading.h"

namespace pithward::batch {

Outcome<std::vector<FoundCore>> paths_on(const ScanFile& scan, const Calibration& calibration,
                                         const MeasureTask& task) {
    if (!task.path.empty()) {
        return std::vector<FoundCore>{FoundCore{task.path, BarkEnd{}, 0.0, std::nullopt, std::nullopt}};
    }
    auto cores = find_cores(scan, calibration);
    if (cores && cores->empty()) {
        return fail(scan.header().file, "no core was found on the scan", "draw its path with --path \"x,y x,y ...\"");
    }
    return cores;
}

Outcome<MeasuredReading> read_core(const ScanFile& scan, const ScanScale& scale, const MeasureTask& task,
                                   const FoundCore& core, const PithKnowledge& knowledge, const Work& work) {
    ReadingRequest request = request_for(core, scan.header().file, scale.for_path(core.path));
    request.wood = task.wood;
    request.outer = task.outer;
    request.last_year = task.last_year;
    auto reading = propose_reading(scan, request, work);
    if (!reading) {
        return tl::unexpected(reading.error());
    }
    if (const auto added = scale.add_findings(*reading); !added) {
        return tl::unexpected(added.error());
    }
    auto series = measure(*reading);
    if (series) {
        *reading = with_pith(std::move(*reading), *series, knowledge, work);
        series = measure(*reading); // with the pith on the core the innermost ring has a width
    }
    if (!series) {
        return tl::unexpected(series.error());
    }
    if (!series->rings.empty() && series->rings.back().year && series->rings.back().year->value() < earliest_year) {
        return fail("--last-year", "the oldest rings would lie before the year " + std::to_string(earliest_year),
                    "give a later year");
    }
    return MeasuredReading{std::move(*reading), std::move(*series)};
}

} // namespace pithward::batch
