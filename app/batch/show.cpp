#include "app/batch/show.h"

#include "app/batch/compared_readings.h"
#include "app/batch/each_accepted.h"
#include "app/batch/height_option.h"
#include "app/batch/output_files.h"
#include "libcore/field/height_allowance.h"
#include "libcore/progress/core_progress.h"
#include "libcore/record/project.h"
#include "libcore/record/scans_in_place.h"
#include "libcore/record/scans_to_settle.h"

#include <array>
#include <cstdio>
#include <memory>
#include <utility>

namespace pithward::batch {

namespace {

struct ShowOptions {
    std::string project;
    std::string json;
    HeightOption to_height;
};

using record::CoreEntry;
using record::ReadingEntry;

/// How far each core is, by what is in the project: what only dating tells does not count here.
std::vector<progress::CoreProgress> progress_of(const std::filesystem::path& folder,
                                                const std::vector<CoreEntry>& cores,
                                                const std::vector<ReadingEntry>& readings) {
    const auto there = record::scans_in_place(folder, cores);
    std::vector<progress::CoreProgress> all;
    all.reserve(cores.size());
    for (const CoreEntry& core : cores) {
        progress::CoreFacts facts;
        facts.scan_named = !core.core.scan.empty();
        facts.scan_there = there.contains(core.core.scan);
        const auto reading =
            core.accepted ? std::ranges::find(readings, *core.accepted, &ReadingEntry::id) : readings.end();
        if (reading != readings.end()) {
            facts.reading = progress::ReadingFacts{progress::state_of(reading->state), reading->boundaries,
                                                   reading->looked_at + reading->in_bulk, reading->open_findings};
        }
        all.push_back(progress::core_progress(facts));
    }
    return all;
}

void print_cores(const std::vector<CoreEntry>& cores, const std::vector<ReadingEntry>& readings,
                 const std::vector<progress::CoreProgress>& progress) {
    std::printf("%-12s %-12s %-16s %8s %-10s %10s %10s %8s %9s  %s\n", "site", "tree", "core", "reading", "state",
                "boundaries", "looked at", "in bulk", "findings", "next");
    for (std::size_t i = 0; i < cores.size(); ++i) {
        const CoreEntry& core = cores[i];
        const std::string next = word(progress[i].next);
        int of_core = 0;
        for (const ReadingEntry& reading : readings) {
            if (reading.core == core.id) {
                ++of_core;
                std::printf("%-12s %-12s %-16s %7lld%s %-10s %10d %10d %8d %4d open  %s\n",
                            in_one_line(core.site.id).c_str(), in_one_line(core.tree.id).c_str(),
                            in_one_line(core.core.id).c_str(), static_cast<long long>(reading.id.value),
                            core.accepted == reading.id ? "*" : " ", reading.state.c_str(), reading.boundaries,
                            reading.looked_at, reading.in_bulk, reading.open_findings,
                            core.accepted == reading.id ? next.c_str() : "");
            }
        }
        if (of_core == 0) {
            std::printf("%-12s %-12s %-16s %8s %-10s %10s %10s %8s %9s  %s\n", in_one_line(core.site.id).c_str(),
                        in_one_line(core.tree.id).c_str(), in_one_line(core.core.id).c_str(), "-",
                        core.core.scan.empty() ? "no scan" : "not read", "", "", "", "", next.c_str());
        }
    }
}

void print_comparisons(const std::vector<CoreEntry>& cores, const std::vector<record::ReadingComparison>& comparisons) {
    constexpr double percent = 100.0;
    for (const record::ReadingComparison& one : comparisons) {
        const auto core = std::ranges::find(cores, one.core, &CoreEntry::id);
        const review::Comparison& both = one.comparison;
        std::printf("%s, reading %lld and %lld: %.1f %% of the rings agree, %zu boundaries only in the first, %zu only "
                    "in the second",
                    core == cores.end() ? "" : core->core.id.c_str(), static_cast<long long>(one.first.value),
                    static_cast<long long>(one.second.value), percent * both.share_agreeing.value_or(0.0),
                    both.only_first.size(), both.only_second.size());
        if (both.bias && both.sd) {
            std::printf("; widths differ by %+.4f mm, standard deviation %.4f mm", both.bias->value(),
                        both.sd->value());
        }
        std::printf("\n");
    }
}

std::string names_of(const std::vector<CoreEntry>& cores) {
    std::string text;
    for (const CoreEntry& core : cores) {
        text += (text.empty() ? "" : ", ") + in_one_line(core.core.id);
    }
    return text;
}

void print_to_settle(const record::ScansToSettle& scans) {
    for (const record::ScansToSettle::Doubt& one : scans.without_core) {
        const std::string may_be = one.cores.empty() ? "" : ", may be that of " + names_of(one.cores);
        std::printf("%s: no core has this scan%s\n", in_one_line(one.scan).c_str(), may_be.c_str());
    }
    for (const record::ScansToSettle::Doubt& one : scans.unclear) {
        std::printf("%s: nothing tells which of its cores is which: %s\n", in_one_line(one.scan).c_str(),
                    names_of(one.cores).c_str());
    }
}

/// The age by each core's accepted reading.
Outcome<std::vector<record::CoreAge>> core_ages(const record::Project& project, const std::vector<CoreEntry>& cores,
                                                const std::optional<HeightAllowance>& allowance) {
    std::vector<record::CoreAge> ages;
    const auto see = [&](const CoreEntry& core, const Reading& reading, const RingSeries& series) {
        if (const auto age = age_of(reading, series, field::height_allowance(core.core, allowance))) {
            ages.push_back({core.id, *age});
        }
    };
    return each_accepted(project, cores, see).map([&] { return std::move(ages); });
}

Exit show(const ShowOptions& options, const CommonOptions& common) {
    const std::array outputs{OutputFile{"--json", options.json}};
    const std::array inputs{options.project};
    if (const auto free = check_outputs(outputs, inputs, common.force); !free) {
        return report(free.error());
    }
    const auto project = record::Project::open(options.project, record::Project::Access::Read);
    if (!project) {
        return report(project.error());
    }
    const auto cores = project->cores();
    const auto readings = project->readings();
    if (!cores || !readings) {
        return report(cores ? readings.error() : cores.error());
    }
    const auto comparisons = compared_readings(*project, *cores, *readings);
    if (!comparisons) {
        return report(comparisons.error());
    }
    const auto to_settle = record::scans_to_settle(*project);
    if (!to_settle) {
        return report(to_settle.error());
    }
    if (options.json.empty()) {
        print_cores(*cores, *readings, progress_of(project->folder(), *cores, *readings));
        print_comparisons(*cores, *comparisons);
        print_to_settle(*to_settle);
    } else {
        const auto ages = core_ages(*project, *cores, allowance_of(options.to_height));
        const auto people = project->people();
        if (!ages || !people) {
            return report(ages ? people.error() : ages.error());
        }
        const std::array bytes{OutputBytes{
            options.json, record::with_scans_to_settle(
                              record::project_json(*cores, *readings, *comparisons, *ages, *people), *to_settle)}};
        if (const auto written = write_outputs(bytes, common.force); !written) {
            return report(written.error());
        }
    }
    const bool open = std::ranges::any_of(*readings, [](const ReadingEntry& one) { return one.open_findings > 0; });
    return common.strict && open ? Exit::NeedsPerson : Exit::Done;
}

} // namespace

std::function<Exit()> attach_show(CLI::App& parser, const CommonOptions& common) {
    const auto options = std::make_shared<ShowOptions>();
    parser.add_option("PROJECT", options->project, "Project to look at")->required();
    parser.add_option("--json", options->json, "Write JSON to this file; - is standard output");
    add_height_option(parser, options->to_height);
    return [options, &common] { return show(*options, common); };
}

} // namespace pithward::batch
