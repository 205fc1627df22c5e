#include "app/batch/labels.h"

#include "app/batch/output_files.h"
#include "app/batch/project_series.h"
#include "app/report/labels/field_form.h"
#include "app/report/labels/field_page.h"
#include "app/report/labels/label_sheet.h"
#include "app/report/offscreen_gui.h"
#include "app/report/paper/pdf_writer.h"
#include "libcore/formats/field_sheet.h"
#include "libcore/formats/text_input.h"
#include "libcore/record/project.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <memory>
#include <utility>

namespace pithward::batch {

namespace {

using formats::SheetRow;

struct LabelsOptions {
    std::string cores;
    std::string out;
    std::string field_sheet;
    std::string field_page;
    std::size_t from_label = 1;
};

/// Told before the work, not after it.
Outcome<void> check_labels(const LabelsOptions& options, const CommonOptions& common) {
    const std::vector<OutputFile> outputs{{"--out", options.out, false},
                                          {"--field-sheet", options.field_sheet, false},
                                          {"--field-page", options.field_page, false}};
    if (std::ranges::all_of(outputs, [](const OutputFile& output) { return output.file.empty(); })) {
        return fail("labels", "nothing is to be written", "give --out, --field-sheet or --field-page");
    }
    if (!options.out.empty() && options.cores.empty()) {
        return fail(options.out, "there is no core to make a label for",
                    "give a field sheet or a project before --out");
    }
    if (options.from_label != 1 && options.out.empty()) {
        return fail("--from-label", "no labels are to be printed", "give --out as well");
    }
    for (const OutputFile& output : outputs) {
        const auto ending = std::filesystem::path(output.file).extension().string();
        if (!output.file.empty() && formats::lower_case(ending) != ".pdf") {
            return fail(output.file, "it would be a PDF, but its name says otherwise", "use the ending .pdf");
        }
    }
    std::vector<std::string> inputs;
    if (!options.cores.empty()) {
        inputs.push_back(options.cores);
    }
    return check_outputs(outputs, inputs, common.force);
}

Outcome<std::vector<SheetRow>> rows_of_project(const std::string& file) {
    const auto project = record::Project::open(file, record::Project::Access::Read);
    if (!project) {
        return tl::unexpected(project.error());
    }
    const auto cores = project->cores();
    if (!cores) {
        return tl::unexpected(cores.error());
    }
    std::vector<SheetRow> rows;
    rows.reserve(cores->size());
    for (const record::CoreEntry& core : *cores) {
        rows.push_back({core.site, core.tree, core.core});
    }
    return rows;
}

/// Counts the rows that are left out.
Outcome<std::vector<SheetRow>> rows_of_sheet(const std::string& file, std::size_t& left_out) {
    std::ifstream in(file, std::ios::binary);
    if (!in) {
        return fail(file, "the field sheet can't be read", "check its name and its permissions");
    }
    auto sheet = read_field_sheet_rows(in);
    if (!sheet) {
        return tl::unexpected(formats::in_file(file, std::move(sheet.error())));
    }
    for (const Fault& row : sheet->left_out) {
        warn(formats::in_file(file, {row.where, "this row is left out: " + row.what, row.remedy}));
    }
    left_out = sheet->left_out.size();
    std::vector<SheetRow> rows;
    for (Site& site : sheet->sites) {
        const std::vector<Tree> trees = std::exchange(site.trees, {});
        for (Tree tree : trees) {
            const std::vector<Core> cores = std::exchange(tree.cores, {});
            for (const Core& core : cores) {
                rows.push_back({site, tree, core});
            }
        }
    }
    return rows;
}

/// The rows of what the options name; none where they name nothing.
Outcome<std::vector<SheetRow>> rows_to_print(const LabelsOptions& options, std::size_t& left_out) {
    if (options.cores.empty()) {
        return std::vector<SheetRow>{};
    }
    return is_project(options.cores) ? rows_of_project(options.cores) : rows_of_sheet(options.cores, left_out);
}

/// All that is asked for. Counts the labels that have no code too.
Outcome<std::vector<OutputBytes>> printed(const LabelsOptions& options, const std::vector<SheetRow>& rows,
                                          std::size_t& left_out) {
    std::vector<OutputBytes> outputs;
    if (!options.out.empty()) {
        auto labels = report::label_sheet(rows, options.from_label);
        if (!labels) {
            return tl::unexpected(formats::in_file(options.cores, std::move(labels.error())));
        }
        for (const Fault& fault : labels->without_code) {
            warn(fault);
        }
        left_out += labels->without_code.size();
        outputs.push_back({options.out, std::move(labels->pdf)});
    }
    if (!options.field_sheet.empty()) {
        auto form = report::field_form(rows);
        if (!form) {
            return tl::unexpected(formats::in_file(options.cores, std::move(form.error())));
        }
        outputs.push_back({options.field_sheet, std::move(*form)});
    }
    if (!options.field_page.empty()) {
        auto page = report::pdf_bytes_of(report::field_page());
        if (!page) {
            return tl::unexpected(std::move(page.error()));
        }
        outputs.push_back({options.field_page, std::move(*page)});
    }
    return outputs;
}

Exit run_labels(const LabelsOptions& options, const CommonOptions& common) {
    if (const auto free = check_labels(options, common); !free) {
        return report(free.error());
    }
    const report::OffscreenGui gui; // Before the project, which would make an application without letters.
    std::size_t left_out = 0;
    const auto rows = rows_to_print(options, left_out);
    if (!rows) {
        return report(rows.error());
    }
    const auto outputs = printed(options, *rows, left_out);
    if (!outputs) {
        return report(outputs.error());
    }
    if (const auto done = write_outputs(*outputs, common.force); !done) {
        return report(done.error());
    }
    return common.strict && left_out > 0 ? Exit::NeedsPerson : Exit::Done;
}

} // namespace

std::function<Exit()> attach_labels(CLI::App& parser, const CommonOptions& common) {
    const auto options = std::make_shared<LabelsOptions>();
    parser.add_option("CORES", options->cores, "Field sheet (CSV) or project whose cores are printed");
    parser.add_option("--out", options->out, "PDF of labels to write: A4, 3 by 8 on a page, with codes");
    parser
        .add_option("--from-label", options->from_label,
                    "Label of the first page to begin with, where some are used: 1 to 24, row by row")
        ->check(CLI::Range(std::size_t{1}, report::labels_a_page));
    parser.add_option("--field-sheet", options->field_sheet, "PDF of a field sheet to fill in by pencil");
    parser.add_option("--field-page", options->field_page, "PDF of a page of advice for the field");
    return [options, &common] { return run_labels(*options, common); };
}

} // namespace pithward::batch
