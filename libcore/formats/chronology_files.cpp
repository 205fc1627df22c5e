#include "libcore/formats/chronology_files.h"

#include "libcore/formats/text_input.h"
#include "libcore/formats/whole_file.h"

#include <algorithm>
#include <array>

namespace pithward {

std::span<const ChronologyFormat> chronology_formats() {
    static constexpr std::array all{
        ChronologyFormat{".csv", "CSV", write_chronology_csv},
        ChronologyFormat{".crn", "decadal chronology", write_chronology_decadal},
        ChronologyFormat{".json", "JSON", write_chronology_json},
    };
    return all;
}

Outcome<const ChronologyFormat*> chronology_format_of(const std::filesystem::path& file) {
    const std::string extension = formats::lower_case(file.extension().string());
    const auto all = chronology_formats();
    const auto found =
        std::ranges::find_if(all, [&](const ChronologyFormat& format) { return extension == format.extension; });
    if (found != all.end()) {
        return &*found;
    }
    std::string known;
    for (const ChronologyFormat& format : all) {
        known += (known.empty() ? "" : ", ") + std::string(format.extension) + " (" + format.name + ")";
    }
    return fail(file.string(), "its ending names no format of a chronology", "use one of " + known);
}

Outcome<void> write_chronology_file(const std::filesystem::path& file, bool force,
                                    const dating::Chronology& chronology) {
    const auto format = chronology_format_of(file);
    if (!format) {
        return tl::unexpected(format.error());
    }
    return write_whole_file(file, force, [&](std::ostream& out) {
        return (*format)->write(out, chronology, file.stem().string()).map_error([&](Fault fault) {
            return formats::in_file(file.string(), std::move(fault));
        });
    });
}

} // namespace pithward
