#include "app/batch/climate.h"

#include "app/batch/index_arguments.h"
#include "app/batch/output_files.h"
#include "app/batch/project_series.h"
#include "app/batch/series_input.h"
#include "app/batch/site_record.h"
#include "app/report/dating_pictures.h"
#include "libcore/dating/chronology.h"
#include "libcore/formats/climate_csv.h"
#include "libcore/formats/climate_json.h"
#include "libcore/formats/text_input.h"
#include "libcore/record/project.h"
#include "libcore/results/climate_response.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <fstream>
#include <memory>
#include <sstream>

namespace pithward::batch {

namespace {

struct ClimateArguments {
    std::vector<std::string> series;
    std::string climate;
    std::string hemisphere; ///< Empty: that of the project's site, else north.
    std::string json;
    std::string picture;
    IndexArguments index{"exponential", "no"};
};

Outcome<void> check_climate_files(const ClimateArguments& arguments, const CommonOptions& common) {
    if (auto known = arguments.picture.empty() ? Outcome<void>() : report::check_picture_name(arguments.picture);
        !known) {
        return known;
    }
    const std::array outputs{OutputFile{"--json", arguments.json}, OutputFile{"--picture", arguments.picture, false}};
    std::vector<std::string> inputs = arguments.series;
    inputs.push_back(arguments.climate);
    return check_outputs(outputs, inputs, common.force);
}

void print_correlation(const results::WindowCorrelation& one) {
    std::printf("%-18s %-9s %6d", words_of(one.window).c_str(), one.detrended ? "detrended" : "as is", one.years);
    if (one.r) {
        std::printf(" %6.2f", *one.r);
    }
    if (one.low && one.high) {
        std::printf("  %5.2f to %5.2f", *one.low, *one.high);
    }
    std::printf("\n");
}

void print_response(const results::ClimateResponse& response) {
    std::printf("%-18s %-9s %6s %6s  %s\n", "months", "series", "years", "r", "90 % interval");
    for (const auto* list : {&response.as_is, &response.detrended}) {
        std::ranges::for_each(*list, print_correlation);
    }
    if (response.strongest && response.chance) {
        std::printf("strongest of %d tried: %s, %s, r %.2f; the strongest of so many is as strong by chance with "
                    "probability %.3f\n",
                    response.tried, words_of(response.strongest->window).c_str(),
                    response.strongest->detrended ? "detrended" : "as is", *response.strongest->r, *response.chance);
    }
    for (const results::RunningCorrelation& one : response.running) {
        std::printf("%d to %d: ", one.from, one.to);
        print_correlation(one.correlation);
    }
}

Outcome<std::vector<OutputBytes>> climate_outputs(const ClimateArguments& arguments,
                                                  const results::ClimateResponse& response,
                                                  const std::vector<std::string>& remarks) {
    std::vector<OutputBytes> outputs;
    if (!arguments.json.empty()) {
        std::ostringstream out;
        if (auto written = write_climate_json(out, response, remarks); !written) {
            return tl::unexpected(std::move(written.error()));
        }
        outputs.push_back({arguments.json, out.str()});
    }
    if (!arguments.picture.empty()) {
        auto bytes = report::climate_picture(response, arguments.picture);
        if (!bytes) {
            return tl::unexpected(std::move(bytes.error()));
        }
        outputs.push_back({arguments.picture, std::move(*bytes)});
    }
    return outputs;
}

/// As told, else by the latitude of the project's site.
Outcome<results::Hemisphere> hemisphere_of(const ClimateArguments& arguments) {
    if (!arguments.hemisphere.empty()) {
        return arguments.hemisphere == "south" ? results::Hemisphere::South : results::Hemisphere::North;
    }
    if (!is_project(arguments.series.front())) {
        return results::Hemisphere::North;
    }
    return record::Project::open(arguments.series.front(), record::Project::Access::Read)
        .and_then([](const record::Project& project) { return project.cores(); })
        .map([](const std::vector<record::CoreEntry>& cores) {
            const auto south = std::ranges::count_if(
                cores, [](const record::CoreEntry& core) { return core.site.latitude.value_or(0.0) < 0.0; });
            return 2 * south > std::ssize(cores) ? results::Hemisphere::South : results::Hemisphere::North;
        });
}

Exit hold_against_climate(const ClimateArguments& arguments, const CommonOptions& common) {
    if (const auto free = check_climate_files(arguments, common); !free) {
        return report(free.error());
    }
    const auto options = index_options(arguments.index);
    const auto climate = options ? climate_of_file(arguments.climate) : tl::unexpected(options.error());
    auto input = climate ? read_series_or_project(arguments.series) : tl::unexpected(climate.error());
    if (!input) {
        return report(input.error());
    }
    if (input->dated.empty()) {
        return report(Fault{arguments.series.front(), "a chronology needs calendar years",
                            "date the series first, with pithward crossdate"});
    }
    const dating::Chronology made = dating::chronology(input->dated, *options);
    std::vector<std::string> remarks = input->remarks;
    remarks.insert(remarks.end(), made.remarks.begin(), made.remarks.end());
    for (const dating::TreeSeries& series : input->undated) {
        remarks.push_back("series " + series.id + " has no calendar years and is left out");
    }
    if (input->dated.size() == 1) {
        remarks.push_back(
            "this is one series only: nothing bears out its years, and what is its own is not averaged out");
    }
    const auto hemisphere = hemisphere_of(arguments);
    if (!hemisphere) {
        return report(hemisphere.error());
    }
    const results::ClimateResponse response = results::climate_response(values_of(made), *climate, *hemisphere);
    if (response.tried == 0) {
        return report(Fault{arguments.climate,
                            "it has fewer than " + std::to_string(results::least_climate_years) +
                                " years in common with the chronology, or does not vary",
                            "give a climate series of the same years"});
    }
    if (!common.quiet) {
        for (const std::string& remark : remarks) {
            std::fprintf(stderr, "%s\n", remark.c_str());
        }
    }
    const auto outputs = climate_outputs(arguments, response, remarks);
    if (!outputs) {
        return report(outputs.error());
    }
    if (const auto written = write_outputs(*outputs, common.force); !written) {
        return report(written.error());
    }
    if (arguments.json.empty()) {
        print_response(response);
    }
    return common.strict && !input->undated.empty() ? Exit::NeedsPerson : Exit::Done;
}

} // namespace

Outcome<results::MonthlyClimate> climate_of_file(const std::string& file) {
    std::ifstream in(file, std::ios::binary);
    if (!in) {
        return fail(file, "there is no such file, or it can't be read", "name a CSV of monthly values");
    }
    return read_climate_csv(in).map_error([&](Fault fault) { return formats::in_file(file, std::move(fault)); });
}

std::function<Exit()> attach_climate(CLI::App& parser, const CommonOptions& common) {
    const auto arguments = std::make_shared<ClimateArguments>();
    parser.add_option("SERIES", arguments->series, "Files of series, of any series format, or a project")->required();
    parser
        .add_option("--climate", arguments->climate,
                    "CSV of monthly values: year and twelve months a row, or year,month,value")
        ->required();
    parser
        .add_option("--hemisphere", arguments->hemisphere,
                    "Of the site: north or south (default: by the latitude of a project, else north)")
        ->check(CLI::IsMember({"north", "south"}));
    parser.add_option("--json", arguments->json, "File for everything that was found; - for standard output");
    parser.add_option("--picture", arguments->picture, "File for a picture of it: .svg, .png or .pdf");
    add_index_arguments(parser, arguments->index);
    return [arguments, &common] { return hold_against_climate(*arguments, common); };
}

} // namespace pithward::batch
