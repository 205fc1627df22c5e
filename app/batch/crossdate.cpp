#include "app/batch/crossdate.h"

#include "app/batch/crossdate_table.h"
#include "app/batch/index_arguments.h"
#include "app/batch/output_files.h"
#include "app/batch/project_series.h"
#include "app/batch/series_input.h"
#include "app/report/dating_pictures.h"
#include "libcore/dating/crossdate.h"
#include "libcore/formats/dating_json.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <memory>
#include <sstream>
#include <utility>

namespace pithward::batch {

namespace {

struct CrossdateArguments {
    std::vector<std::string> series;
    std::string against;
    std::optional<int> length;
    std::optional<int> step;
    bool pairs = false;
    IndexArguments index{"spline:32", "yes"};
    std::string json;
    std::string picture;
    std::string agreement;
};

/// The input with what is to be known of it.
struct Job {
    dating::CrossdateInput input;
    dating::CrossdateOptions options;
    std::vector<std::string> remarks;
};

/// Files of series, or one project.
Outcome<ProjectSeries> read_input(const std::vector<std::string>& files) {
    if (std::ranges::none_of(files, is_project)) {
        return read_series(files).map([](SeriesInput input) { return ProjectSeries{std::move(input), {}}; });
    }
    if (files.size() > 1) {
        return fail(files.front(), "a project is crossdated alone", "name it alone, or export its series first");
    }
    return read_project_series(files.front());
}

Outcome<Job> job_of(const CrossdateArguments& arguments) {
    Job job;
    const auto index = index_options(arguments.index);
    if (!index) {
        return tl::unexpected(index.error());
    }
    job.options.index = *index;
    job.options.length = arguments.length;
    job.options.step = arguments.step;
    job.options.pairs = arguments.pairs;
    if (const std::string wrong = job.options.validate(); !wrong.empty()) {
        return fail("", wrong, "see pithward crossdate --help");
    }
    auto read = read_input(arguments.series);
    if (!read) {
        return tl::unexpected(read.error());
    }
    job.input.dated = std::move(read->input.dated);
    job.input.undated = std::move(read->input.undated);
    job.input.wood = std::move(read->wood);
    job.remarks = std::move(read->input.remarks);
    if (!arguments.against.empty()) {
        auto reference = read_series({arguments.against});
        if (!reference) {
            return tl::unexpected(reference.error());
        }
        if (reference->dated.empty()) {
            return fail(arguments.against, "a reference needs calendar years", "choose a file of dated series");
        }
        job.input.reference = std::move(reference->dated);
        job.remarks.insert(job.remarks.end(), reference->remarks.begin(), reference->remarks.end());
    } else if (job.input.dated.size() + (job.input.undated.empty() ? 0 : 1) < 2) {
        return fail(arguments.series.front(), "there is nothing to hold its series against",
                    "give more series, or a reference with --against");
    }
    return job;
}

Outcome<std::vector<OutputBytes>> outputs_of(const CrossdateArguments& arguments,
                                             const dating::CrossdateResult& result) {
    const CrossdateSettings settings{arguments.index.detrend, arguments.index.prewhiten == "yes", arguments.against};
    std::vector<OutputBytes> outputs;
    if (!arguments.json.empty()) {
        std::ostringstream out;
        if (auto written = write_crossdate_json(out, result, settings); !written) {
            return tl::unexpected(std::move(written.error()));
        }
        outputs.push_back({arguments.json, out.str()});
    }
    using Painter = Outcome<std::string> (*)(const dating::CrossdateResult&, const std::string&);
    for (const auto& [file, paint] : {std::pair<const std::string&, Painter>{arguments.picture, report::series_picture},
                                      {arguments.agreement, report::agreement_picture}}) {
        if (!file.empty()) {
            auto bytes = paint(result, file);
            if (!bytes) {
                return tl::unexpected(std::move(bytes.error()));
            }
            outputs.push_back({file, std::move(*bytes)});
        }
    }
    return outputs;
}

/// Told before the work, not after it.
Outcome<void> check_names(const CrossdateArguments& arguments, const CommonOptions& common) {
    for (const std::string& file : {arguments.picture, arguments.agreement}) {
        if (auto known = file.empty() ? Outcome<void>() : report::check_picture_name(file); !known) {
            return known;
        }
    }
    const std::array outputs{OutputFile{"--json", arguments.json}, OutputFile{"--picture", arguments.picture, false},
                             OutputFile{"--agreement", arguments.agreement, false}};
    return check_outputs(outputs, arguments.series, common.force);
}

bool is_doubtful(const dating::DatedResult& series) {
    return !series.slips.empty() || series.whole_shift != 0 || !series.agreement.r;
}

Exit run(const CrossdateArguments& arguments, const CommonOptions& common) {
    if (const auto free = check_names(arguments, common); !free) {
        return report(free.error());
    }
    const auto job = job_of(arguments);
    if (!job) {
        return report(job.error());
    }
    dating::CrossdateResult result = dating::crossdate(job->input, job->options);
    result.remarks.insert(result.remarks.begin(), job->remarks.begin(), job->remarks.end());
    if (!common.quiet) {
        for (const std::string& remark : result.remarks) {
            std::fprintf(stderr, "%s\n", remark.c_str());
        }
    }
    const auto outputs = outputs_of(arguments, result);
    if (!outputs) {
        return report(outputs.error());
    }
    if (const auto written = write_outputs(*outputs, common.force); !written) {
        return report(written.error());
    }
    if (arguments.json.empty()) {
        print_crossdate(result);
    }
    return common.strict && std::ranges::any_of(result.dated, is_doubtful) ? Exit::NeedsPerson : Exit::Done;
}

} // namespace

std::function<Exit()> attach_crossdate(CLI::App& parser, const CommonOptions& common) {
    const auto arguments = std::make_shared<CrossdateArguments>();
    parser.add_option("SERIES", arguments->series, "Files of series, of any series format, or a project")->required();
    parser.add_option("--against", arguments->against, "File of dated series whose mean is the reference");
    parser.add_option("--length", arguments->length, "Years of a segment; default: by the site's own signal");
    parser.add_option("--step", arguments->step, "Years from a segment to the next; default: half of the length");
    parser.add_flag("--pairs", arguments->pairs,
                    "Also hold every pair of dated series against each other, at every shift");
    add_index_arguments(parser, arguments->index);
    parser.add_option("--json", arguments->json, "File for everything that was found; - for standard output");
    parser.add_option("--picture", arguments->picture,
                      "File for a picture of each series on the mean of the others: .svg, .png or .pdf");
    parser.add_option("--agreement", arguments->agreement,
                      "File for a picture of where the series agree through time: .svg, .png or .pdf");
    return [arguments, &common] { return run(*arguments, common); };
}

} // namespace pithward::batch
