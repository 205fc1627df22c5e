#include "app/batch/chronology.h"

#include "app/batch/index_arguments.h"
#include "app/batch/output_files.h"
#include "app/batch/project_series.h"
#include "app/report/dating_pictures.h"
#include "libcore/dating/chronology.h"
#include "libcore/formats/chronology_files.h"

#include <array>
#include <cstdio>
#include <memory>

namespace pithward::batch {

namespace {

struct ChronologyArguments {
    std::vector<std::string> series;
    std::string out;
    std::string picture;
    IndexArguments index{"exponential", "no"};
};

void tell(const std::vector<std::string>& remarks, const CommonOptions& common) {
    for (const std::string& remark : remarks) {
        if (!common.quiet) {
            std::fprintf(stderr, "%s\n", remark.c_str());
        }
    }
}

/// The picture as bytes; none where none is asked for.
Outcome<std::vector<OutputBytes>> drawn(const ChronologyArguments& arguments, const dating::Chronology& made) {
    if (arguments.picture.empty()) {
        return std::vector<OutputBytes>();
    }
    return report::chronology_picture(made, arguments.picture).map([&](std::string bytes) {
        return std::vector<OutputBytes>{{arguments.picture, std::move(bytes)}};
    });
}

Exit run(const ChronologyArguments& arguments, const CommonOptions& common) {
    if (const auto format = chronology_format_of(arguments.out); !format) {
        return report(format.error());
    }
    if (const auto known = arguments.picture.empty() ? Outcome<void>() : report::check_picture_name(arguments.picture);
        !known) {
        return report(known.error());
    }
    const std::array outputs{OutputFile{"--out", arguments.out, false},
                             OutputFile{"--picture", arguments.picture, false}};
    if (const auto free = check_outputs(outputs, arguments.series, common.force); !free) {
        return report(free.error());
    }
    const auto options = index_options(arguments.index);
    if (!options) {
        return report(options.error());
    }
    auto input = read_series_or_project(arguments.series);
    if (!input) {
        return report(input.error());
    }
    if (input->dated.empty()) {
        return report(Fault{arguments.series.front(), "a chronology needs calendar years",
                            "date the series first, with pithward crossdate --against"});
    }
    for (const dating::TreeSeries& series : input->undated) {
        input->remarks.push_back("series " + series.id + " has no calendar years and is left out");
    }
    dating::Chronology made = dating::chronology(input->dated, *options);
    made.remarks.insert(made.remarks.begin(), input->remarks.begin(), input->remarks.end());
    tell(made.remarks, common);
    const auto picture = drawn(arguments, made);
    if (!picture) {
        return report(picture.error());
    }
    if (const auto written = write_chronology_file(arguments.out, common.force, made); !written) {
        return report(written.error());
    }
    if (const auto written = write_outputs(*picture, common.force); !written) {
        return report(written.error());
    }
    return common.strict && !input->undated.empty() ? Exit::NeedsPerson : Exit::Done;
}

} // namespace

std::function<Exit()> attach_chronology(CLI::App& parser, const CommonOptions& common) {
    const auto arguments = std::make_shared<ChronologyArguments>();
    std::string endings;
    for (const ChronologyFormat& format : chronology_formats()) {
        endings += (endings.empty() ? "" : ", ") + std::string(format.extension) + " " + format.name;
    }
    parser.add_option("SERIES", arguments->series, "Files of series, of any series format, or a project")->required();
    parser.add_option("--out", arguments->out, "File to write: " + endings)->required();
    parser.add_option("--picture", arguments->picture,
                      "File for a picture of it, with depth and signal: .svg, .png or .pdf");
    add_index_arguments(parser, arguments->index);
    return [arguments, &common] { return run(*arguments, common); };
}

} // namespace pithward::batch
