#include "app/batch/measure_outputs.h"

#include "app/batch/output_files.h"
#include "app/report/overlay_file.h"
#include "libcore/formats/decadal.h"
#include "libcore/formats/series_csv.h"
#include "libcore/measure/series_summary.h"

#include <array>
#include <cstdio>
#include <sstream>

namespace pithward::batch {

namespace {

WidthTable table_of(std::span<const MeasuredScan> scans) {
    WidthTable table;
    for (const MeasuredScan& scan : scans) {
        for (const MeasuredReading& measured : scan.readings) {
            table.series.push_back(width_series(measured.reading.core, measured.series));
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

/// What is to be written, and what a person should know of it.
struct Prepared {
    std::vector<OutputBytes> outputs;
    std::vector<std::string> remarks;
};

Outcome<void> add_series(Prepared& prepared, const std::string& file, const WidthTable& table, SeriesWriter write) {
    std::ostringstream out;
    const auto said = write(out, table);
    if (!said) {
        Fault fault = said.error();
        fault.where = fault.where.empty() ? file : file + ", " + fault.where;
        return tl::unexpected(fault);
    }
    for (const std::string& remark : *said) {
        prepared.remarks.push_back(Fault{file, remark, ""}.line());
    }
    prepared.outputs.push_back({file, out.str()});
    return {};
}

Outcome<void> add_json(Prepared& prepared, const std::string& file, std::span<const MeasuredScan> scans) {
    std::ostringstream out;
    auto written = write_readings_json(out, all_readings(scans));
    prepared.outputs.push_back({file, out.str()});
    return written;
}

Outcome<void> add_picture(Prepared& prepared, const std::string& file, const MeasuredScan& measured) {
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
    return report::overlay_bytes(*scan, measured.file, readings, series).map([&](std::string bytes) {
        prepared.outputs.push_back({file, std::move(bytes)});
    });
}

void print_table(std::span<const MeasuredScan> scans) {
    std::printf("%-28s %6s %6s %6s %10s %10s %9s\n", "core", "rings", "first", "last", "length mm", "mean mm",
                "findings");
    for (const MeasuredScan& scan : scans) {
        for (const MeasuredReading& reading : scan.readings) {
            const SeriesSummary summary = summary_of(reading.series);
            const auto year = [](const std::vector<Ring>& rings, bool first) {
                const auto known = rings.empty() ? std::nullopt : (first ? rings.back().year : rings.front().year);
                return known ? std::to_string(known->value()) : std::string("-");
            };
            std::printf("%-28s %6d %6s %6s %10.2f %10.3f %9zu\n", reading.reading.core.c_str(), summary.rings,
                        year(reading.series.rings, true).c_str(), year(reading.series.rings, false).c_str(),
                        summary.length.value(), summary.mean ? summary.mean->value() : 0.0,
                        reading.reading.findings.size());
        }
    }
}

} // namespace

Outcome<void> check_outputs(const MeasureOptions& options, const CommonOptions& common) {
    const std::array outputs{
        OutputFile{"--csv", options.csv},
        OutputFile{"--decadal", options.decadal},
        OutputFile{"--overlay", options.overlay, false},
        OutputFile{"--json", options.json},
    };
    return check_outputs(outputs, options.scans, common.force);
}

Outcome<void> write_outputs(const MeasureOptions& options, const CommonOptions& common,
                            std::span<const MeasuredScan> scans) {
    // All is made before anything is written: what can't be made leaves no half of the outputs behind.
    Prepared prepared;
    Outcome<void> made;
    if (!options.csv.empty()) {
        made = add_series(prepared, options.csv, table_of(scans), write_series_csv);
    }
    if (made && !options.decadal.empty()) {
        made = add_series(prepared, options.decadal, table_of(scans), write_decadal);
    }
    if (made && !options.overlay.empty()) {
        made = add_picture(prepared, options.overlay, scans.front());
    }
    if (made && !options.json.empty()) {
        made = add_json(prepared, options.json, scans);
    }
    if (!made) {
        return made;
    }
    if (prepared.outputs.empty()) {
        print_table(scans);
        return {};
    }
    auto written = write_outputs(prepared.outputs, common.force);
    for (const std::string& remark : prepared.remarks) {
        if (written && !common.quiet) {
            std::fprintf(stderr, "%s\n", remark.c_str());
        }
    }
    return written;
}

} // namespace pithward::batch
