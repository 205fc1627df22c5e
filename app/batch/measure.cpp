#include "app/batch/measure.h"

#include "app/batch/measure_options.h"
#include "app/batch/measure_outputs.h"
#include "app/batch/scan_scale.h"
#include "libcore/measure/measure.h"
#include "libcore/pith/judge_pith.h"
#include "libimaging/boundary/find_cores.h"
#include "libimaging/boundary/propose_reading.h"
#include "libimaging/scan/threads.h"

#include <spdlog/spdlog.h>

#include <algorithm>
#include <cstdio>
#include <memory>

namespace pithward::batch {

namespace {

/// The paths to read on a scan: the one given, or that of every core found.
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
                                   const FoundCore& core) {
    ReadingRequest request = request_for(core, scan.header().file, scale.for_path(core.path));
    request.wood = task.wood;
    request.outer = task.outer;
    request.last_year = task.last_year;
    auto reading = propose_reading(scan, request);
    if (!reading) {
        return tl::unexpected(reading.error());
    }
    scale.add_findings(*reading);
    auto series = measure(*reading);
    if (series) {
        *reading = with_pith(std::move(*reading), *series);
        series = measure(*reading); // with the pith on the core the innermost ring has a width
    }
    if (!series) {
        return tl::unexpected(series.error());
    }
    return MeasuredReading{std::move(*reading), std::move(*series)};
}

Outcome<MeasuredScan> measure_scan(const std::string& file, const MeasureOptions& options, const MeasureTask& task) {
    const auto scan = ScanFile::open(file);
    if (!scan) {
        return tl::unexpected(scan.error());
    }
    const auto scale = scale_of(*scan, options.dpi, task.ruler);
    if (!scale) {
        return tl::unexpected(scale.error());
    }
    const auto cores = paths_on(*scan, scale->for_path(task.path), task);
    if (!cores) {
        return tl::unexpected(cores.error());
    }
    MeasuredScan measured{file, {}};
    for (const FoundCore& core : *cores) {
        auto reading = read_core(*scan, *scale, task, core);
        if (reading) {
            measured.readings.push_back(std::move(*reading));
        } else if (cores->size() > 1) {
            // One core that can't be read does not keep back the others of its tray.
            spdlog::warn("{}", reading.error().line());
        } else {
            return tl::unexpected(reading.error());
        }
    }
    if (measured.readings.empty()) {
        return fail(file, "none of its cores could be read", "draw a path with --path \"x,y x,y ...\"");
    }
    return measured;
}

bool needs_person(const MeasuredScan& scan) {
    return std::ranges::any_of(scan.readings,
                               [](const MeasuredReading& reading) { return !reading.reading.findings.empty(); });
}

void tell(const MeasuredScan& scan, const CommonOptions& common) {
    if (common.quiet) {
        return;
    }
    for (const MeasuredReading& reading : scan.readings) {
        std::fprintf(stderr, "%s: %zu rings, %zu findings\n", scan.file.c_str(), reading.series.rings.size(),
                     reading.reading.findings.size());
    }
}

Exit run(const MeasureOptions& options, const CommonOptions& common) {
    const auto task = task_of(options);
    if (!task) {
        return report(task.error());
    }
    if (const auto free = check_outputs(options, common); !free) {
        return report(free.error());
    }
    use_threads(common.threads);
    std::vector<MeasuredScan> scans;
    for (const std::string& file : options.scans) {
        auto measured = measure_scan(file, options, *task);
        if (!measured) {
            return report(measured.error());
        }
        tell(*measured, common);
        scans.push_back(std::move(*measured));
    }
    if (const auto written = write_outputs(options, common, scans); !written) {
        return report(written.error());
    }
    return common.strict && std::ranges::any_of(scans, needs_person) ? Exit::NeedsPerson : Exit::Done;
}

} // namespace

std::function<Exit()> attach_measure(CLI::App& parser, const CommonOptions& common) {
    const auto options = std::make_shared<MeasureOptions>();
    add_options(parser, *options);
    return [options, &common] { return run(*options, common); };
}

} // namespace pithward::batch
