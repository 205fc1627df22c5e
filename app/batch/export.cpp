#include "app/batch/export.h"

#include "app/batch/accepted_readings.h"
#include "app/batch/height_option.h"
#include "app/batch/output_files.h"
#include "libcore/dating/dated_part.h"
#include "libcore/formats/age_csv.h"
#include "libcore/formats/archive_template.h"
#include "libcore/formats/decadal.h"
#include "libcore/formats/series_csv.h"
#include "libcore/review/statement.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <filesystem>
#include <functional>
#include <iterator>
#include <memory>
#include <sstream>

namespace pithward::batch {

namespace {

struct ExportOptions {
    std::string project;
    std::string only;
    std::string decadal;
    std::string csv;
    std::string archive;
    std::string json;
    std::string ages;
    std::string basal_area;
    HeightOption to_height;
};

/// What is to be written, and what a person should know of it.
struct Export {
    WidthTable table;
    std::vector<OutputBytes> outputs;
    std::vector<std::string> remarks;
};

WidthTable series_of(const AcceptedReadings& accepted, std::vector<std::string>& remarks) {
    WidthTable table;
    table.series.reserve(accepted.readings.size());
    for (const MeasuredReading& one : accepted.readings) {
        RingSeries dated = dating::dated_part(one.series);
        if (dated.rings.size() < one.series.rings.size()) {
            remarks.push_back(one.reading.core + ": rings beyond lost wood have no year and are left out: " +
                              std::to_string(one.series.rings.size() - dated.rings.size()));
        }
        table.series.push_back(width_series(one.reading.core, dated));
    }
    return table;
}

/// The table without series that have no calendar years, for formats that are made of them.
WidthTable dated_series(const WidthTable& table, const std::string& file, std::vector<std::string>& remarks) {
    WidthTable dated = table;
    std::erase_if(dated.series, [](const WidthSeries& one) { return !one.dated; });
    for (const WidthSeries& one : table.series) {
        if (!one.dated) {
            remarks.push_back(Fault{file, "series " + one.id + " is undated and left out", ""}.line());
        }
    }
    return dated;
}

using TableWriter = std::function<Outcome<std::vector<std::string>>(std::ostream&, const WidthTable&)>;

/// A CSV has its headers before the table.
Outcome<std::vector<std::string>> write_csv(std::ostream& out, const WidthTable& table) {
    write_csv_headers(out, table.headers);
    WidthTable without = table;
    without.headers.clear();
    return write_series_csv(out, without);
}

Outcome<void> add_series(Export& result, const std::string& file, const WidthTable& table, const TableWriter& write) {
    if (file.empty()) {
        return {};
    }
    if (table.series.empty()) {
        return fail(file, "no series has calendar years", "set them in the window, or take --csv");
    }
    std::ostringstream out;
    const auto said = write(out, table);
    if (!said) {
        return fail(said.error().where.empty() ? file : file + ", " + said.error().where, said.error().what,
                    said.error().remedy);
    }
    for (const std::string& remark : *said) {
        result.remarks.push_back(Fault{file, remark, ""}.line());
    }
    result.outputs.push_back({file, out.str()});
    return {};
}

Outcome<Export> exported(const ExportOptions& options, const AcceptedReadings& accepted) {
    Export result;
    result.table = series_of(accepted, result.remarks);
    const std::string name = std::filesystem::path(options.project).filename().string();
    result.table.headers = {"Pithward " PITHWARD_VERSION ", project " + name +
                            (options.only.empty() ? "" : ", readings that are passed")};
    for (std::string& line : review::statement(accepted.standings)) {
        result.table.headers.push_back(std::move(line));
    }
    auto made = add_series(result, options.csv, result.table, write_csv);
    if (made && !options.decadal.empty()) {
        made = add_series(result, options.decadal, dated_series(result.table, options.decadal, result.remarks),
                          write_decadal);
    }
    if (made && !options.archive.empty()) {
        const auto write = [&](std::ostream& out, const WidthTable& table) {
            return write_archive_template(out, table, accepted.notes);
        };
        made = add_series(result, options.archive, dated_series(result.table, options.archive, result.remarks), write);
    }
    if (made && !options.json.empty()) {
        std::ostringstream out;
        made = write_readings_json(out, accepted.readings, result.table.headers);
        result.outputs.push_back({options.json, out.str()});
    }
    const auto add_table = [&](const std::string& file, auto write) {
        if (made && !file.empty()) {
            std::ostringstream out;
            write_csv_headers(out, result.table.headers);
            write(out, accepted.readings);
            result.outputs.push_back({file, out.str()});
        }
    };
    add_table(options.ages, write_ages_csv);
    add_table(options.basal_area, write_basal_area_csv);
    return made ? Outcome<Export>(std::move(result)) : tl::unexpected(std::move(made.error()));
}

/// Why there is nothing to export.
Fault nothing_to_export(const std::string& project, const AcceptedReadings& accepted) {
    if (accepted.not_passed > 0) {
        return {project, "no reading is passed", "let a second person pass readings, or leave out --only passed"};
    }
    return accepted.left_out.empty() ? Fault{project, "there is no reading yet", "run pithward measure"}
                                     : accepted.left_out.front();
}

void tell(const Export& result, const AcceptedReadings& accepted, const CommonOptions& common) {
    for (const Fault& fault : accepted.left_out) {
        warn({fault.where, "left out: " + fault.what, fault.remedy});
    }
    if (common.quiet) {
        return;
    }
    for (const std::string& remark : result.remarks) {
        std::fprintf(stderr, "%s\n", remark.c_str());
    }
    for (const std::string& line : result.table.headers) {
        std::fprintf(stderr, "%s\n", line.c_str());
    }
    if (accepted.not_passed + accepted.cores_without > 0) {
        std::fprintf(stderr, "Cores left out: %d not passed, %d without a reading\n", accepted.not_passed,
                     accepted.cores_without);
    }
}

Exit export_project(const ExportOptions& options, const CommonOptions& common) {
    const std::array outputs{OutputFile{"--decadal", options.decadal},  OutputFile{"--csv", options.csv},
                             OutputFile{"--template", options.archive}, OutputFile{"--json", options.json},
                             OutputFile{"--ages", options.ages},        OutputFile{"--basal-area", options.basal_area}};
    if (std::ranges::all_of(outputs, [](const OutputFile& one) { return one.file.empty(); })) {
        return report(
            {"", "no file to export to is named", "give --decadal, --csv, --template, --json, --ages or --basal-area"});
    }
    const std::array inputs{options.project};
    if (const auto free = check_outputs(outputs, inputs, common.force); !free) {
        return report(free.error());
    }
    const auto project = record::Project::open(options.project, record::Project::Access::Read);
    if (!project) {
        return report(project.error());
    }
    // A scan is not written over, whatever is asked.
    const auto scans = project->scans();
    std::vector<std::string> kept;
    if (scans) {
        std::ranges::transform(*scans, std::back_inserter(kept),
                               [&](const record::ScanEntry& scan) { return (project->folder() / scan.path).string(); });
    }
    if (const auto free = scans ? check_outputs(outputs, kept, common.force) : tl::unexpected(scans.error()); !free) {
        return report(free.error());
    }
    const auto accepted = accepted_readings(*project, !options.only.empty(), allowance_of(options.to_height));
    if (!accepted) {
        return report(accepted.error());
    }
    if (accepted->readings.empty()) {
        return report(nothing_to_export(options.project, *accepted));
    }
    const auto result = exported(options, *accepted);
    if (!result) {
        return report(result.error());
    }
    if (const auto written = write_outputs(result->outputs, common.force); !written) {
        return report(written.error());
    }
    tell(*result, *accepted, common);
    const bool open = std::ranges::any_of(accepted->standings, [](const auto& one) { return one.open_findings > 0; });
    return common.strict && (open || !accepted->left_out.empty()) ? Exit::NeedsPerson : Exit::Done;
}

} // namespace

std::function<Exit()> attach_export(CLI::App& parser, const CommonOptions& common) {
    const auto options = std::make_shared<ExportOptions>();
    parser.add_option("PROJECT", options->project, "Project whose accepted readings are written")->required();
    parser.add_option("--only", options->only, "Leave out what is not so: passed")->check(CLI::IsMember({"passed"}));
    parser.add_option("--decadal", options->decadal, "File for the series in decades; - for standard output");
    parser.add_option("--csv", options->csv, "File for the series, years down; - for standard output");
    parser.add_option("--template", options->archive, "File in the archive's template; - for standard output");
    parser.add_option("--json", options->json, "File for everything of the readings; - for standard output");
    parser.add_option("--ages", options->ages, "File for the year of each core's pith, as CSV; - for standard output");
    parser.add_option("--basal-area", options->basal_area,
                      "File for the basal area increment of each ring, as CSV; - for standard output");
    add_height_option(parser, options->to_height);
    return [options, &common] { return export_project(*options, common); };
}

} // namespace pithward::batch
