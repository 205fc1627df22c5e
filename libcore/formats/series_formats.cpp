#include "libcore/formats/series_formats.h"

#include "libcore/formats/archive_template.h"
#include "libcore/formats/decadal.h"
#include "libcore/formats/series_csv.h"
#include "libcore/formats/series_json.h"
#include "libcore/formats/text_input.h"
#include "libcore/formats/whole_file.h"

#include <algorithm>
#include <array>
#include <fstream>

namespace pithward {

std::span<const SeriesFormat> series_formats() {
    static constexpr std::array all{
        SeriesFormat{".rwl", "decadal", read_decadal, write_decadal},
        SeriesFormat{".txt", "archive template", read_archive_template, write_archive_template},
        SeriesFormat{".csv", "CSV", read_series_csv, write_series_csv},
        SeriesFormat{".json", "JSON", read_series_json, write_series_json},
    };
    return all;
}

Outcome<const SeriesFormat*> series_format_of(const std::filesystem::path& file) {
    const std::string extension = formats::lower_case(file.extension().string());
    const auto all = series_formats();
    const auto found =
        std::ranges::find_if(all, [&](const SeriesFormat& format) { return extension == format.extension; });
    if (found != all.end()) {
        return &*found;
    }
    std::string known;
    for (const SeriesFormat& format : all) {
        known += (known.empty() ? "" : ", ") + std::string(format.extension) + " (" + format.name + ")";
    }
    return fail(file.string(), "its ending names no series format", "use one of " + known);
}

Outcome<WidthTable> read_series_file(const std::filesystem::path& file) {
    const auto format = series_format_of(file);
    if (!format) {
        return tl::unexpected(format.error());
    }
    std::error_code error;
    std::ifstream in(file, std::ios::binary);
    if (!in || std::filesystem::is_directory(file, error)) {
        return fail(file.string(), "the file can't be opened", "check its name and that it may be read");
    }
    return (*format)->read(in).map_error(
        [&](Fault fault) { return formats::in_file(file.string(), std::move(fault)); });
}

Outcome<std::vector<std::string>> write_series_file(const std::filesystem::path& file, bool force,
                                                    const WidthTable& table) {
    const auto format = series_format_of(file);
    if (!format) {
        return tl::unexpected(format.error());
    }
    std::vector<std::string> remarks;
    auto written = write_whole_file(file, force, [&](std::ostream& out) -> Outcome<void> {
        auto noticed = (*format)->write(out, table);
        if (!noticed) {
            return tl::unexpected(formats::in_file(file.string(), std::move(noticed.error())));
        }
        remarks = std::move(*noticed);
        return {};
    });
    if (!written) {
        return tl::unexpected(std::move(written.error()));
    }
    return remarks;
}

} // namespace pithward
