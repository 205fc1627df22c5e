#include "app/batch/measure.h"

#include "app/batch/dropped_cores.h"
#include "app/batch/measure_options.h"
#include "app/batch/measure_outputs.h"
#include "app/batch/measure_project.h"
#include "app/batch/read_core.h"
#include "libcore/specimen/width_series.h"
#include "libimaging/scan/threads.h"

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <memory>
#include <optional>

namespace pithward::batch {

namespace {

Outcome<MeasuredScan> measure_scan(const std::string& file, const MeasureOptions& options, const MeasureTask& task,
                                   const Work& work) {
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
    DroppedCores dropped(file, cores->size());
    const std::string stem = std::filesystem::path(file).stem().string();
    std::vector<std::optional<Outcome<MeasuredReading>>> read(cores->size());
    work.share_out(static_cast<int>(cores->size()), [&](int i) {
        const auto k = static_cast<std::size_t>(i);
        read[k] = read_core(*scan, *scale, task, (*cores)[k], {}, work);
    });
    for (std::size_t i = 0; i < cores->size(); ++i) {
        Outcome<MeasuredReading>& reading = *read[i];
        if (reading) {
            reading->reading.core = series_id(stem, i, cores->size());
            measured.readings.push_back(std::move(*reading));
        } else {
            dropped.add(i, reading.error());
        }
    }
    if (measured.readings.empty()) {
        return tl::unexpected(dropped.all());
    }
    // One core that can't be read does not keep back the others of its tray, nor changes their names. It is told even
    // where no progress is.
    for (const Fault& fault : dropped.by_kind()) {
        warn(fault);
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
        const auto counted = [](std::size_t count, const char* what) {
            return std::to_string(count) + " " + what + (count == 1 ? "" : "s");
        };
        std::fprintf(stderr, "%s: %s, %s\n", scan.file.c_str(), counted(reading.series.rings.size(), "ring").c_str(),
                     counted(reading.reading.findings.size(), "finding").c_str());
    }
}

/// Opens every scan once, so that one that can't be used is told before the others are measured.
Outcome<void> check_scans(const MeasureOptions& options, const MeasureTask& task) {
    for (const std::string& file : options.scans) {
        const auto scan = ScanFile::open(file);
        if (!scan) {
            return tl::unexpected(scan.error());
        }
        if (!task.ruler.lines.empty()) {
            continue; // a ruler tells what the file may not
        }
        if (const auto scale = believed_calibration(scan->header(), options.dpi); !scale) {
            return tl::unexpected(scale.error());
        }
    }
    return {};
}

Exit run(const MeasureOptions& options, const CommonOptions& common) {
    if (names_project(options)) {
        return measure_project(options, common);
    }
    const auto task = task_of(options);
    if (!task) {
        return report(task.error());
    }
    if (const auto free = check_outputs(options, common); !free) {
        return report(free.error());
    }
    use_threads(common.threads);
    Work work;
    work.threads = common.threads;
    if (const auto usable = check_scans(options, *task); !usable) {
        return report(usable.error());
    }
    std::vector<MeasuredScan> scans;
    for (const std::string& file : options.scans) {
        auto measured = measure_scan(file, options, *task, work);
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
