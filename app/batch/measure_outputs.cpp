#include "app/batch/measure_outputs.h"

#include "app/report/overlay_file.h"
#include "libcore/formats/decadal.h"
#include "libcore/formats/series_csv.h"
#include "libcore/formats/whole_file.h"
#include "libcore/measure/series_summary.h"

#include <cstdio>
#include <filesystem>
#include <iostream>

namespace pithward::batch {

namespace {

WidthTable table_of(std::span<const MeasuredScan> scans) {
    WidthTable table;
    for (const MeasuredScan& scan : scans) {
        const std::string stem = std::filesystem::path(scan.file).stem().string();
        for (std::size_t i = 0; i < scan.readings.size(); ++i) {
            table.series.push_back(width_series(series_id(stem, i, scan.readings.size()), scan.readings[i].series));
        }
    }
    return table;
}

std::vector<MeasuredReading> all_readings(std::span<const MeasuredScan> scans) {
    std::vector<MeasuredReading> all;
    for (const MeasuredScan& scan : scans) {
        all.insert(all.end(), scan.readings.begin(), scan.readings.end());
    }
    return all;
}

using SeriesWriter = Outcome<std::vector<std::string>> (*)(std::ostream&, const WidthTable&);

Outcome<void> write_series(const std::string& file, const CommonOptions& common, const WidthTable& table,
                           SeriesWriter write) {
    std::vector<std::string> remarks;
    auto written = write_whole_file(file, common.force, [&](std::ostream& out) -> Outcome<void> {
        auto said = write(out, table);
        if (!said) {
            return tl::unexpected(said.error());
        }
        remarks = std::move(*said);
        return {};
    });
    for (const std::string& remark : remarks) {
        if (written && !common.quiet) {
            std::fprintf(stderr, "%s\n", Fault{file, remark, ""}.line().c_str());
        }
    }
    return written;
}

Outcome<void> write_json(const std::string& file, const CommonOptions& common, std::span<const MeasuredScan> scans) {
    const std::vector<MeasuredReading> readings = all_readings(scans);
    if (file == "-") {
        auto written = write_readings_json(std::cout, readings);
        std::cout.flush();
        return written;
    }
    return write_whole_file(file, common.force, [&](std::ostream& out) { return write_readings_json(out, readings); });
}

Outcome<void> write_picture(const std::string& file, const CommonOptions& common, const MeasuredScan& measured) {
    const auto scan = ScanFile::open(measured.file);
    if (!scan) {
        return tl::unexpected(scan.error());
    }
    std::vector<Reading> readings;
    std::vector<RingSeries> series;
    for (const MeasuredReading& reading : measured.readings) {
        readings.push_back(reading.reading);
        series.push_back(reading.series);
    }
    return report::write_overlay(file, common.force, *scan, measured.file, readings, series);
}

void print_table(std::span<const MeasuredScan> scans) {
    std::printf("%-28s %6s %6s %6s %10s %10s %9s\n", "core", "rings", "first", "last", "length mm", "mean mm",
                "findings");
    for (const MeasuredScan& scan : scans) {
        const std::string stem = std::filesystem::path(scan.file).stem().string();
        for (std::size_t i = 0; i < scan.readings.size(); ++i) {
            const MeasuredReading& reading = scan.readings[i];
            const SeriesSummary summary = summary_of(reading.series);
            const auto year = [](const std::vector<Ring>& rings, bool first) {
                const auto known = rings.empty() ? std::nullopt : (first ? rings.back().year : rings.front().year);
                return known ? std::to_string(known->value()) : std::string("-");
            };
            std::printf("%-28s %6d %6s %6s %10.2f %10.3f %9zu\n", series_id(stem, i, scan.readings.size()).c_str(),
                        summary.rings, year(reading.series.rings, true).c_str(),
                        year(reading.series.rings, false).c_str(), summary.length.value(),
                        summary.mean ? summary.mean->value() : 0.0, reading.reading.findings.size());
        }
    }
}

} // namespace

Outcome<void> check_outputs(const MeasureOptions& options, const CommonOptions& common) {
    for (const std::string& file : {options.json, options.csv, options.decadal, options.overlay}) {
        if (auto free = check_free(file, common); !free) {
            return free;
        }
    }
    return {};
}

Outcome<void> write_outputs(const MeasureOptions& options, const CommonOptions& common,
                            std::span<const MeasuredScan> scans) {
    Outcome<void> done;
    if (!options.csv.empty()) {
        done = write_series(options.csv, common, table_of(scans), write_series_csv);
    }
    if (done && !options.decadal.empty()) {
        done = write_series(options.decadal, common, table_of(scans), write_decadal);
    }
    if (done && !options.overlay.empty()) {
        done = write_picture(options.overlay, common, scans.front());
    }
    if (done && !options.json.empty()) {
        done = write_json(options.json, common, scans);
    }
    if (done && options.json.empty() && options.csv.empty() && options.decadal.empty() && options.overlay.empty()) {
        print_table(scans);
    }
    return done;
}

} // namespace pithward::batch
