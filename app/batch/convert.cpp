#include "app/batch/convert.h"

#include "app/batch/output_files.h"
#include "libcore/formats/series_formats.h"

#include <array>
#include <cstdio>
#include <filesystem>
#include <memory>
#include <string>

namespace pithward::batch {

namespace {

struct ConvertOptions {
    std::string in;
    std::string out;
};

void tell(const std::string& file, const std::vector<std::string>& remarks, const CommonOptions& common) {
    if (common.quiet) {
        return;
    }
    for (const std::string& remark : remarks) {
        std::fprintf(stderr, "%s\n", Fault{file, remark, ""}.line().c_str());
    }
}

Exit convert(const ConvertOptions& options, const CommonOptions& common) {
    // A wrong name for the output is told before a long input is read.
    if (const auto format = series_format_of(options.out); !format) {
        return report(format.error());
    }
    const std::array outputs{OutputFile{"OUT", options.out, false}};
    if (const auto free = check_outputs(outputs, {}, common.force); !free) {
        return report(free.error());
    }
    const auto table = read_series_file(options.in);
    if (!table) {
        return report(table.error());
    }
    const auto remarks = write_series_file(options.out, common.force, *table);
    if (!remarks) {
        return report(remarks.error());
    }
    tell(options.in, table->remarks, common);
    tell(options.out, *remarks, common);
    // What was noticed in the input wants somebody to look at it; what was done for the output is told and no more.
    return common.strict && !table->remarks.empty() ? Exit::NeedsPerson : Exit::Done;
}

} // namespace

std::function<Exit()> attach_convert(CLI::App& parser, const CommonOptions& common) {
    const auto options = std::make_shared<ConvertOptions>();
    std::string endings;
    for (const SeriesFormat& format : series_formats()) {
        endings += (endings.empty() ? "" : ", ") + std::string(format.extension) + " " + format.name;
    }
    parser.add_option("IN", options->in, "File to read: " + endings)->required();
    parser.add_option("OUT", options->out, "File to write, in the format of its ending")->required();
    return [options, &common] { return convert(*options, common); };
}

} // namespace pithward::batch
