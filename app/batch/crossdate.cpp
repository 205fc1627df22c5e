#include "app/batch/crossdate.h"

#include "app/batch/index_arguments.h"
#include "app/batch/output_files.h"
#include "app/batch/series_input.h"
#include "libcore/dating/crossdate.h"
#include "libcore/formats/dating_json.h"
#include "libcore/formats/whole_file.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <iostream>
#include <memory>

namespace pithward::batch {

namespace {

struct CrossdateArguments {
    std::vector<std::string> series;
    std::string against;
    std::optional<int> length;
    std::optional<int> step;
    IndexArguments index{"spline:32", "yes"};
    std::string json;
};

/// The input with what is to be known of it.
struct Job {
    dating::CrossdateInput input;
    dating::CrossdateOptions options;
    std::vector<std::string> remarks;
};

Outcome<Job> job_of(const CrossdateArguments& arguments) {
    Job job;
    const auto index = index_options(arguments.index);
    if (!index) {
        return tl::unexpected(index.error());
    }
    job.options.index = *index;
    job.options.length = arguments.length;
    job.options.step = arguments.step;
    if (const std::string wrong = job.options.validate(); !wrong.empty()) {
        return fail("", wrong, "see pithward crossdate --help");
    }
    auto read = read_series(arguments.series);
    if (!read) {
        return tl::unexpected(read.error());
    }
    job.input.dated = std::move(read->dated);
    job.input.undated = std::move(read->undated);
    job.remarks = std::move(read->remarks);
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

std::string years_of(const dating::DatedResult& series) {
    return std::to_string(series.first_year) + " to " + std::to_string(series.last_year);
}

std::string words_of(const dating::Slip& slip) {
    const bool missing = slip.kind == dating::Slip::Kind::RingMissing;
    return (missing ? "ring " + std::to_string(slip.ring_year()) + " is missing"
                    : "ring " + std::to_string(slip.ring_year()) + " is counted twice") +
           " (" + std::to_string(slip.ring_from()) + " to " + std::to_string(slip.ring_to()) + ")";
}

void print_series(const dating::DatedResult& series) {
    std::printf("%-12s %-16s", series.id.c_str(), years_of(series).c_str());
    if (series.agreement.r) {
        std::printf(" %6.2f %6.1f %6.2f", *series.agreement.r, std::min(999.0, series.agreement.t),
                    series.signs.share.value_or(0.5));
    } else {
        std::printf(" %6s %6s %6s", "-", "-", "-");
    }
    std::string said;
    for (const dating::Slip& slip : series.slips) {
        said += (said.empty() ? "" : "; ") + words_of(slip);
    }
    if (series.whole_shift != 0) {
        said +=
            std::string(said.empty() ? "" : "; ") + "add " + std::to_string(series.whole_shift) + " to its last year";
    }
    std::printf("  %s\n", said.c_str());
}

void print(const dating::CrossdateResult& result) {
    std::printf("%-12s %-16s %6s %6s %6s  %s\n", "series", "years", "r", "t", "signs", "what the others say");
    for (const dating::DatedResult& series : result.dated) {
        print_series(series);
    }
    for (const dating::UndatedResult& series : result.undated) {
        if (series.places.empty()) {
            std::printf("%-12s no position\n", series.id.c_str());
            continue;
        }
        const dating::RankedMatch& best = series.places.front();
        std::printf("%-12s best at %d to %d, r %.2f, t %.1f, by chance %.2g\n", series.id.c_str(),
                    series.first_year_at(best), series.last_year_at(best), best.match.r, best.match.t,
                    best.chance_of_best);
    }
}

Outcome<void> write(const CrossdateArguments& arguments, const CommonOptions& common,
                    const dating::CrossdateResult& result) {
    const CrossdateSettings settings{arguments.index.detrend, arguments.index.prewhiten == "yes", arguments.against};
    if (arguments.json.empty()) {
        print(result);
        return {};
    }
    if (arguments.json == "-") {
        auto written = write_crossdate_json(std::cout, result, settings);
        std::cout.flush();
        return written;
    }
    return write_whole_file(arguments.json, common.force,
                            [&](std::ostream& out) { return write_crossdate_json(out, result, settings); });
}

bool is_doubtful(const dating::DatedResult& series) {
    return !series.slips.empty() || series.whole_shift != 0 || !series.agreement.r;
}

Exit run(const CrossdateArguments& arguments, const CommonOptions& common) {
    const std::array outputs{OutputFile{"--json", arguments.json}};
    if (const auto free = check_outputs(outputs, arguments.series, common.force); !free) {
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
    if (const auto written = write(arguments, common, result); !written) {
        return report(written.error());
    }
    return common.strict && std::ranges::any_of(result.dated, is_doubtful) ? Exit::NeedsPerson : Exit::Done;
}

} // namespace

std::function<Exit()> attach_crossdate(CLI::App& parser, const CommonOptions& common) {
    const auto arguments = std::make_shared<CrossdateArguments>();
    parser.add_option("SERIES", arguments->series, "Files of series, of any series format")->required();
    parser.add_option("--against", arguments->against, "File of dated series whose mean is the reference");
    parser.add_option("--length", arguments->length, "Years of a segment; default: by the site's own signal");
    parser.add_option("--step", arguments->step, "Years from a segment to the next; default: half of the length");
    add_index_arguments(parser, arguments->index);
    parser.add_option("--json", arguments->json, "File for everything that was found; - for standard output");
    return [arguments, &common] { return run(*arguments, common); };
}

} // namespace pithward::batch
