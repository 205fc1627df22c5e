#include "app/bench/exporting/exports.h"

#include "app/report/overlay.h"
#include "libcore/formats/decadal.h"
#include "libcore/formats/reading_json.h"
#include "libcore/formats/series_csv.h"
#include "libcore/formats/whole_file.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <filesystem>
#include <sstream>

namespace pithward::bench {

namespace {

WidthTable table_of(const ExportInput& input) {
    const std::string stem = std::filesystem::path(input.scan->name()).stem().string();
    WidthTable table;
    for (std::size_t i = 0; i < input.cores.size(); ++i) {
        const std::string& known = input.cores[i].reading.core;
        const std::string id = known.empty() ? series_id(stem, i, input.cores.size()) : known;
        table.series.push_back(width_series(id, input.cores[i].series));
    }
    return table;
}

using Writer = Outcome<std::vector<std::string>> (*)(std::ostream&, const WidthTable&);

template <Writer write>
Outcome<ExportBytes> series_bytes(const ExportInput& input, const Work&) {
    std::ostringstream out;
    auto remarks = write(out, table_of(input));
    if (!remarks) {
        return tl::unexpected(remarks.error());
    }
    return ExportBytes{out.str(), std::move(*remarks)};
}

Outcome<ExportBytes> json_bytes(const ExportInput& input, const Work&) {
    std::vector<MeasuredReading> readings;
    for (const picture::MeasuredCore& core : input.cores) {
        readings.push_back({core.reading, core.series});
    }
    std::ostringstream out;
    return write_readings_json(out, readings).map([&] { return ExportBytes{out.str(), {}}; });
}

Outcome<ExportBytes> picture_bytes(const ExportInput& input, const Work&) {
    const Scan& header = input.scan->header;
    const int longer = std::max(header.width, header.height);
    const int reduction = std::max(1, longer / report::overlay_side);
    return input.scan->pixels({0, 0, header.width, header.height}, reduction).and_then([&](const QImage& picture) {
        std::vector<Reading> readings;
        std::vector<RingSeries> series;
        for (const picture::MeasuredCore& core : input.cores) {
            readings.push_back(core.reading);
            series.push_back(core.series);
        }
        const QImage overlay = report::render_overlay({picture, {header.width, header.height}, input.scan->name()},
                                                      readings, series, report::overlay_side);
        return report::png_bytes(overlay).map([](std::string bytes) { return ExportBytes{std::move(bytes), {}}; });
    });
}

} // namespace

std::span<const ExportFormat> export_formats() {
    static const std::array formats{
        ExportFormat{ActionId::ExportCsv, QT_TRANSLATE_NOOP("Exports", "Comma-separated values"), "csv",
                     series_bytes<write_series_csv>},
        ExportFormat{ActionId::ExportDecadal, QT_TRANSLATE_NOOP("Exports", "Decadal file"), "rwl",
                     series_bytes<write_decadal>},
        ExportFormat{ActionId::ExportJson, QT_TRANSLATE_NOOP("Exports", "JSON"), "json", json_bytes},
        ExportFormat{ActionId::ExportPicture, QT_TRANSLATE_NOOP("Exports", "Picture"), "png", picture_bytes},
    };
    return formats;
}

Outcome<void> spare_scans(const std::string& path, const ExportInput& input) {
    const auto same = [&](const std::string& scan) {
        std::error_code error; // a file that is not there yet is no scan
        return std::filesystem::equivalent(path, scan, error);
    };
    if (same(input.scan->path) || std::ranges::any_of(input.other_scans, same)) {
        return fail(path, "this is a scan that is open here", "name another file");
    }
    return {};
}

Outcome<void> write_export(const std::string& path, const ExportBytes& made) {
    return write_whole_file(path, true, [&](std::ostream& out) -> Outcome<void> {
        out.write(made.bytes.data(), std::ssize(made.bytes));
        return {};
    });
}

Outcome<std::vector<std::string>> export_to(const std::string& path, const ExportFormat& format,
                                            const ExportInput& input, const Work& work) {
    if (const auto spared = spare_scans(path, input); !spared) {
        return tl::unexpected(spared.error());
    }
    const auto made = format.bytes(input, work);
    if (!made) {
        return tl::unexpected(made.error());
    }
    return write_export(path, *made).map([&] { return made->remarks; });
}

std::string proposed_name(const OpenedScan& scan, const ExportFormat& format) {
    const std::filesystem::path path(scan.path);
    auto beside = path;
    beside.replace_extension(format.suffix);
    if (beside == path) {
        beside.replace_filename(path.stem().string() + "-rings." + format.suffix);
    }
    return beside.string();
}

} // namespace pithward::bench
