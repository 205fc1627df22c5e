#include "app/batch/package.h"

#include "app/batch/accepted_readings.h"
#include "app/batch/height_option.h"
#include "app/batch/site_record.h"
#include "app/batch/undated_cores.h"
#include "app/report/offscreen_gui.h"
#include "app/report/package/package_files.h"
#include "app/report/paper/html_writer.h"
#include "app/report/paper/pdf_writer.h"
#include "app/report/site/site_document.h"
#include "libcore/dating/dated_part.h"
#include "libcore/formats/archive_template.h"
#include "libcore/formats/decadal.h"
#include "libcore/formats/field_sheet.h"
#include "libcore/formats/package_check.h"
#include "libcore/review/statement.h"

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <memory>
#include <sstream>

namespace pithward::batch {

namespace {

struct PackageOptions {
    std::string project;
    std::string out;
    std::string only;
    HeightOption to_height;
};

/// A package as it will be written, and what a person should know of it.
struct Package {
    std::vector<report::PackageFile> files;
    std::vector<PackageGap> gaps;
    std::vector<std::string> remarks;
    std::vector<UndatedCore> undated;
};

/// The series that have calendar years; the others are told.
WidthTable dated_table(const AcceptedReadings& accepted, Package& package) {
    WidthTable table;
    for (const MeasuredReading& one : accepted.readings) {
        const RingSeries dated = dating::dated_part(one.series);
        WidthSeries series = width_series(one.reading.core, dated);
        if (!series.dated) {
            package.undated.push_back(why_undated(accepted, one));
            package.gaps.push_back(gap_of(package.undated.back()));
            continue;
        }
        if (dated.rings.size() < one.series.rings.size()) {
            package.remarks.push_back(series.id + ": rings beyond lost wood have no year and are left out: " +
                                      std::to_string(one.series.rings.size() - dated.rings.size()));
        }
        table.series.push_back(std::move(series));
    }
    return table;
}

Outcome<void> add_series(Package& package, const std::string& stem, const WidthTable& table, const StudyNotes& notes) {
    std::ostringstream decadal;
    std::ostringstream archive;
    auto said = write_decadal(decadal, table);
    auto more = said ? write_archive_template(archive, table, notes) : tl::unexpected(said.error());
    if (!more) {
        return tl::unexpected(std::move(more.error()));
    }
    if (auto same = check_package_series(decadal.str(), archive.str()); !same) {
        return same;
    }
    said->insert(said->end(), more->begin(), more->end() - 1); // The last one tells of gaps, which are listed.
    package.remarks.insert(package.remarks.end(), said->begin(), said->end());
    std::vector<PackageGap> gaps = template_gaps(archive.str());
    package.gaps.insert(package.gaps.begin(), gaps.begin(), gaps.end());
    package.files.push_back({stem + ".rwl", decadal.str()});
    package.files.push_back({stem + "-template.txt", archive.str()});
    return {};
}

/// The report of those cores that are in the package.
Outcome<void> add_report(Package& package, const std::string& stem, report::SiteRecord record, bool only_passed) {
    if (only_passed) {
        for (report::CoreRecord& core : record.cores) {
            if (core.measured && core.standing.state != Reading::State::Passed) {
                core.measured.reset();
                core.age.reset();
                core.pictures.clear();
                core.not_measured = "Its reading is not passed and not part of this package";
            }
        }
        std::vector<review::Standing> standings;
        for (const report::CoreRecord& core : record.cores) {
            if (core.measured) {
                standings.push_back(core.standing);
            }
        }
        record.statement = review::statement(standings);
        record.groups = dated_groups(record.cores, record.crossdating, record.chronology);
    }
    const report::Document document = report::site_document(record);
    auto pdf = report::pdf_bytes_of(document);
    if (!pdf) {
        return tl::unexpected(std::move(pdf.error()));
    }
    package.files.push_back({stem + "-report.pdf", std::move(*pdf)});
    package.files.push_back({stem + "-report.html", report::html_bytes(document)});
    return {};
}

std::string told(const PackageGap& gap) {
    return std::string(gap.needed ? "needed: " : "customary: ") + gap.what + "; " + gap.remedy;
}

/// What is in the package and what it lacks, for who opens it.
std::string contents(const Package& package, const std::string& stem, const std::vector<std::string>& headers) {
    std::string text = stem + ": ring widths, packed for the archive\n\n";
    for (const std::string& line : headers) {
        text += line + "\n";
    }
    text += "\n" + stem + ".rwl  series, decadal\n" + stem +
            "-template.txt  the same series in the archive's template\n" + stem +
            "-metadata.csv  the field sheet of these cores\n" + stem +
            "-readings.json  boundaries, uncertainty, pith, findings, review\n" + stem + "-report.pdf, " + stem +
            "-report.html  how it was done; both say the same\n" + report::checksums_name +
            "  checksums of all other files: sha256sum -c " + report::checksums_name + "\n\nStill missing\n";
    for (const PackageGap& gap : package.gaps) {
        text += "- " + told(gap) + "\n";
    }
    return text + (package.gaps.empty() ? "- nothing that the program knows of\n" : "");
}

/// What of the work itself is still to be done, before all else that is missing.
std::vector<PackageGap> review_gaps(const AcceptedReadings& accepted) {
    std::size_t open = 0;
    std::size_t unpassed = 0;
    for (const MeasuredReading& one : accepted.readings) {
        open +=
            static_cast<std::size_t>(std::ranges::count(one.reading.findings, Finding::State::Open, &Finding::state));
        unpassed += one.reading.state == Reading::State::Passed ? 0U : 1U;
    }
    std::vector<PackageGap> gaps;
    if (open > 0) {
        gaps.push_back(
            {"findings are open: " + std::to_string(open), "answer them, on the bench or in the review", false});
    }
    if (unpassed > 0) {
        gaps.push_back({"readings that no second person has passed: " + std::to_string(unpassed),
                        "have them reviewed, or take --only passed", false});
    }
    return gaps;
}

Outcome<Package> packed(const PackageOptions& options, const AcceptedReadings& accepted, report::SiteRecord record) {
    Package package;
    package.gaps = review_gaps(accepted);
    const std::string stem = std::filesystem::path(options.project).stem().string();
    WidthTable table = dated_table(accepted, package);
    if (table.series.empty()) {
        return tl::unexpected(none_dated(options.project, package.undated, accepted.notes));
    }
    table.headers = {"Pithward " PITHWARD_VERSION ", project " + stem +
                     (options.only.empty() ? "" : ", readings that are passed")};
    for (std::string& line : review::statement(accepted.standings)) {
        table.headers.push_back(std::move(line));
    }
    if (auto added = add_series(package, stem, table, accepted.notes); !added) {
        return tl::unexpected(std::move(added.error()));
    }
    if (table.series.size() == 1) {
        package.gaps.push_back({"there is one series only, so nothing bears out its years", "core more trees", false});
    }
    std::ostringstream sheet;
    std::ostringstream json;
    auto written = write_field_sheet(sheet, accepted.sites);
    written = written ? write_readings_json(json, accepted.readings, table.headers) : written;
    package.files.push_back({stem + "-metadata.csv", sheet.str()});
    package.files.push_back({stem + "-readings.json", json.str()});
    written = written ? add_report(package, stem, std::move(record), !options.only.empty()) : written;
    if (!written) {
        return tl::unexpected(std::move(written.error()));
    }
    package.files.push_back({"README.txt", contents(package, stem, table.headers)});
    package.files = report::with_checksums(std::move(package.files));
    return package;
}

Fault nothing_to_pack(const PackageOptions& options, const AcceptedReadings& accepted) {
    return accepted.not_passed > 0 ? Fault{options.project, "no reading is passed",
                                           "let a second person pass readings, or leave out --only passed"}
                                   : Fault{options.project, "there is no reading to pack yet", "run pithward measure"};
}

void tell(const Package& package, const AcceptedReadings& accepted, bool quiet) {
    for (const Fault& fault : accepted.left_out) {
        warn({fault.where, "left out: " + fault.what, fault.remedy});
    }
    for (const PackageGap& gap : package.gaps) {
        if (gap.needed || !quiet) {
            std::fprintf(stderr, "missing, %s\n", told(gap).c_str());
        }
    }
    for (const std::string& remark : package.remarks) {
        if (!quiet) {
            std::fprintf(stderr, "%s\n", remark.c_str());
        }
    }
    if (!quiet && accepted.not_passed + accepted.cores_without > 0) {
        std::fprintf(stderr, "Cores left out: %d not passed, %d without a reading\n", accepted.not_passed,
                     accepted.cores_without);
    }
}

Exit run_package(const PackageOptions& options, const CommonOptions& common) {
    if (const auto free = report::check_package_place(options.out, common.force); !free) {
        return report(free.error());
    }
    const report::OffscreenGui gui; // Before the project, which would make an application without letters.
    const auto project = record::Project::open(options.project, record::Project::Access::Read);
    if (!project) {
        return report(project.error());
    }
    const auto allowance = allowance_of(options.to_height);
    const auto accepted = accepted_readings(*project, !options.only.empty(), allowance);
    if (!accepted || accepted->readings.empty()) {
        return report(accepted ? nothing_to_pack(options, *accepted) : accepted.error());
    }
    auto record = site_record(*project, allowance);
    const auto package = record ? packed(options, *accepted, std::move(*record)) : tl::unexpected(record.error());
    if (!package) {
        return report(package.error());
    }
    tell(*package, *accepted, common.quiet);
    if (const auto done = report::write_package(options.out, package->files, common.force); !done) {
        return report(done.error());
    }
    const bool needed = std::ranges::any_of(package->gaps, &PackageGap::needed);
    const bool open = std::ranges::any_of(accepted->standings, [](const auto& one) { return one.open_findings > 0; });
    return common.strict && (needed || open || !accepted->left_out.empty()) ? Exit::NeedsPerson : Exit::Done;
}

} // namespace

std::function<Exit()> attach_package(CLI::App& parser, const CommonOptions& common) {
    const auto options = std::make_shared<PackageOptions>();
    parser.add_option("PROJECT", options->project, "Project whose accepted readings are packed")->required();
    parser.add_option("--out", options->out, "Folder to make, or file that ends in .zip")->required();
    parser.add_option("--only", options->only, "Leave out what is not so: passed")->check(CLI::IsMember({"passed"}));
    add_height_option(parser, options->to_height);
    return [options, &common] { return run_package(*options, common); };
}

} // namespace pithward::batch
