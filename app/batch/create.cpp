#include "app/batch/create.h"

#include "app/batch/outside_folders.h"
#include "app/batch/project_scans.h"
#include "app/batch/sheet_scans.h"
#include "libcore/formats/field_sheet.h"
#include "libcore/formats/text_input.h"
#include "libcore/record/project.h"
#include "libcore/record/scan_search.h"

#include <atomic>
#include <cmath>
#include <cstdio>
#include <fstream>
#include <map>
#include <memory>

namespace pithward::batch {

namespace {

struct CreateOptions {
    std::string project;
    std::string sheet;
    std::string scans;
    std::string by;
    std::vector<std::string> outside;
};

Outcome<FieldSheet> sheet_of(const std::string& file) {
    std::ifstream in(file, std::ios::binary);
    if (!in) {
        return fail(file, "the field sheet can't be read", "check its name and its permissions");
    }
    return read_field_sheet_rows(in).map_error([&](Fault fault) { return formats::in_file(file, std::move(fault)); });
}

/// Two cores whose names differ in their case alone are mostly one, and their files may get in each other's way.
void warn_of_case(const std::vector<Site>& sites) {
    for (const Site& site : sites) {
        std::map<std::string, std::string> known;
        for (const Tree& tree : site.trees) {
            for (const Core& core : tree.cores) {
                const auto [before, is_new] = known.emplace(formats::lower_case(core.id), core.id);
                if (!is_new) {
                    warn({core.id, "it differs from core " + before->second + " in upper and lower case only",
                          "check that they are two cores"});
                }
            }
        }
    }
}

/// Sizes and checksums, with a line to standard error at each tenth of a large folder.
Outcome<std::vector<record::ScanEntry>> summed(const std::vector<record::ScanToSum>& scans,
                                               const CommonOptions& common) {
    constexpr std::size_t large_folder = 50;
    Work work;
    work.threads = common.threads;
    std::atomic<int> told = 0;
    if (!common.quiet && scans.size() >= large_folder) {
        work.progress = [&told](double done) {
            const int tenths = static_cast<int>(std::floor(10.0 * done));
            for (int before = told; before < tenths;) {
                if (told.compare_exchange_weak(before, tenths)) {
                    std::fprintf(stderr, "checksums of the scans: %d %%\n", 10 * tenths);
                    break;
                }
            }
        };
    }
    return record::scan_entries(scans, work);
}

Exit create(const CreateOptions& options, const CommonOptions& common) {
    std::error_code error;
    if (!options.project.ends_with(".pithward")) {
        return report({options.project, "a project's name ends in .pithward", "give it that ending"});
    }
    if (std::filesystem::exists(options.project, error)) {
        return report({options.project, "the file is there already", "choose another name"});
    }
    auto sheet = sheet_of(options.sheet);
    if (!sheet) {
        return report(sheet.error());
    }
    for (const Fault& row : sheet->left_out) {
        warn(formats::in_file(options.sheet, {row.where, "this row is left out: " + row.what, row.remedy}));
    }
    if (sheet->as_latin1) {
        warn({options.sheet, "it is not UTF-8 and was read as Latin-1",
              "check its special letters, or save it as UTF-8"});
    }
    warn_of_case(sheet->sites);
    if (sheet->sites.empty()) {
        return report({options.sheet, "no row of the field sheet can be taken", "see the lines above"});
    }
    const auto home =
        std::filesystem::weakly_canonical(std::filesystem::absolute(options.project), error).parent_path();
    const auto scans = options.scans.empty() ? home : std::filesystem::weakly_canonical(options.scans, error);
    const auto outside = outside_folders(options.outside);
    if (!outside) {
        return report(outside.error());
    }
    const bool inside = scans == home || record::stays_inside(scans.lexically_relative(home));
    if (!inside && !record::is_named(scans, *outside)) {
        return report({options.scans, "the scans are outside of the project's folder, so they would part company",
                       "put the project into a folder that holds them; or allow it with --outside, here and each time "
                       "that they are measured"});
    }
    const auto folder = ScanFolder::of(scans);
    if (!folder) {
        return report(folder.error());
    }
    const SheetScans taken = take_scans(*sheet, *folder, home, *outside);
    for (const Fault& open : taken.open) {
        warn(open);
    }
    auto entries = summed(taken.of_cores, common);
    if (!entries) {
        return report(entries.error());
    }
    entries->insert(entries->end(), taken.left.begin(), taken.left.end());
    const auto project = record::Project::create(options.project, sheet->sites, *entries, stamp_now(options.by));
    if (!project) {
        return report(project.error());
    }
    if (!common.quiet) {
        std::fprintf(stderr, "%s: %zu scans\n", options.project.c_str(), taken.of_cores.size());
    }
    return common.strict && (!taken.open.empty() || !sheet->left_out.empty()) ? Exit::NeedsPerson : Exit::Done;
}

} // namespace

std::function<Exit()> attach_create(CLI::App& parser, const CommonOptions& common) {
    const auto options = std::make_shared<CreateOptions>();
    parser.add_option("PROJECT", options->project, "Project to make: NAME.pithward")->required();
    parser.add_option("--sheet", options->sheet, "Field sheet, a CSV with one core a row")->required();
    parser.add_option("--scans", options->scans, "Folder of the scans, in the project's folder; default: that one");
    add_outside_option(parser, options->outside);
    parser.add_option("--by", options->by, "Who does it; default: the user's name");
    return [options, &common] { return create(*options, common); };
}

} // namespace pithward::batch
