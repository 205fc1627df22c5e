#include "app/batch/report.h"

#include "app/batch/climate.h"
#include "app/batch/height_option.h"
#include "app/batch/output_files.h"
#include "app/batch/site_record.h"
#include "app/report/offscreen_gui.h"
#include "app/report/paper/html_writer.h"
#include "app/report/paper/pdf_writer.h"
#include "app/report/site/site_document.h"
#include "libcore/formats/text_input.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <filesystem>
#include <memory>

namespace pithward::batch {

namespace {

struct ReportOptions {
    std::string project;
    std::vector<std::string> out;
    std::string climate;
    HeightOption to_height;
};

/// A form of the report. A new one is a function and one line in the list.
struct ReportForm {
    const char* extension;
    Outcome<std::string> (*bytes)(const report::Document& document);
};

Outcome<std::string> as_html(const report::Document& document) {
    return report::html_bytes(document);
}

Outcome<ReportForm> form_of(const std::string& file) {
    static constexpr std::array all{ReportForm{".pdf", report::pdf_bytes_of}, ReportForm{".html", as_html}};
    const std::string ending = formats::lower_case(std::filesystem::path(file).extension().string());
    for (const ReportForm& form : all) {
        if (ending == form.extension) {
            return form;
        }
    }
    return fail(file, "its ending names no form of a report", "use .pdf or .html");
}

/// Told before the work, not after it.
Outcome<void> check_files(const ReportOptions& options, const CommonOptions& common) {
    std::vector<OutputFile> outputs;
    for (const std::string& file : options.out) {
        if (const auto form = form_of(file); !form) {
            return tl::unexpected(form.error());
        }
        outputs.push_back({"--out", file, false});
    }
    std::vector<std::string> inputs{options.project};
    if (!options.climate.empty()) {
        inputs.push_back(options.climate);
    }
    return check_outputs(outputs, inputs, common.force);
}

Outcome<std::vector<OutputBytes>> written(const ReportOptions& options, const report::Document& document) {
    std::vector<OutputBytes> outputs;
    for (const std::string& file : options.out) {
        auto bytes = form_of(file).and_then([&](const ReportForm& form) { return form.bytes(document); });
        if (!bytes) {
            return tl::unexpected(std::move(bytes.error()));
        }
        outputs.push_back({file, std::move(*bytes)});
    }
    return outputs;
}

/// What the report could not show.
int warn_of_gaps(const report::SiteRecord& record) {
    int gaps = 0;
    for (const report::CoreRecord& core : record.cores) {
        for (const report::CorePicture& picture : core.pictures) {
            if (picture.jpeg.empty()) {
                ++gaps;
                warn({picture.scan, core.name + " has no picture in the report: " + picture.reason,
                      "put the scan where the project knows it"});
            }
        }
    }
    return gaps;
}

Exit run_report(const ReportOptions& options, const CommonOptions& common) {
    if (const auto free = check_files(options, common); !free) {
        return report(free.error());
    }
    results::MonthlyClimate climate;
    if (!options.climate.empty()) {
        auto read = climate_of_file(options.climate);
        if (!read) {
            return report(read.error());
        }
        climate = std::move(*read);
    }
    const report::OffscreenGui gui; // Before the project, which would make an application without letters.
    const auto project = record::Project::open(options.project, record::Project::Access::Read);
    if (!project) {
        return report(project.error());
    }
    const auto seen = [&](const std::string& core) {
        if (!common.quiet) {
            std::fprintf(stderr, "%s\n", core.c_str());
        }
    };
    auto record = site_record(*project, allowance_of(options.to_height), seen);
    if (!record) {
        return report(record.error());
    }
    if (!options.climate.empty()) {
        add_climate(*record, climate, std::filesystem::path(options.climate).filename().string());
    }
    if (std::ranges::none_of(record->cores, [](const auto& core) { return core.measured.has_value(); })) {
        return report(Fault{options.project, "there is no reading to report yet", "run pithward measure"});
    }
    const auto outputs = written(options, report::site_document(*record));
    if (!outputs) {
        return report(outputs.error());
    }
    if (const auto done = write_outputs(*outputs, common.force); !done) {
        return report(done.error());
    }
    const int gaps = warn_of_gaps(*record);
    const bool open =
        std::ranges::any_of(record->cores, [](const auto& core) { return core.standing.open_findings > 0; });
    return common.strict && (open || gaps > 0) ? Exit::NeedsPerson : Exit::Done;
}

} // namespace

std::function<Exit()> attach_report(CLI::App& parser, const CommonOptions& common) {
    const auto options = std::make_shared<ReportOptions>();
    parser.add_option("PROJECT", options->project, "Project to tell of")->required();
    parser.add_option("--out", options->out, "File to write, .pdf or .html; give it twice for both")->required();
    parser.add_option("--climate", options->climate, "CSV of monthly values to hold the chronologies against");
    add_height_option(parser, options->to_height);
    return [options, &common] { return run_report(*options, common); };
}

} // namespace pithward::batch
