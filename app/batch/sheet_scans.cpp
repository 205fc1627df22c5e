#include "app/batch/sheet_scans.h"

#include "app/batch/command.h"
#include "app/batch/outside_folders.h"
#include "libcore/field/scan_matching.h"
#include "libcore/record/scan_search.h"
#include "libimaging/code/code_reader.h"

#include <map>
#include <set>

namespace pithward::batch {

namespace {

namespace fs = std::filesystem;
using field::ScanMatch;

/// The cores of a sheet in the order of its rows.
std::vector<std::pair<const Site*, Core*>> cores_by_row(FieldSheet& sheet) {
    std::map<std::pair<std::string, std::string>, std::pair<const Site*, Core*>> by_name;
    for (Site& site : sheet.sites) {
        for (Tree& tree : site.trees) {
            for (Core& core : tree.cores) {
                by_name[{site.id, core.id}] = {&site, &core};
            }
        }
    }
    std::vector<std::pair<const Site*, Core*>> cores;
    for (const auto& name : sheet.order) {
        cores.push_back(by_name.at(name));
    }
    return cores;
}

std::string in_a_row(const std::vector<std::string>& names) {
    std::string text;
    for (std::size_t i = 0; i < names.size(); ++i) {
        text += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + names[i];
    }
    return text;
}

class ScanTaker {
public:
    ScanTaker(const ScanFolder& folder, fs::path home, const std::vector<fs::path>& outside)
        : folder_(folder)
        , home_(std::move(home))
        , outside_(outside) {}

    SheetScans take(FieldSheet& sheet) {
        const auto cores = cores_by_row(sheet);
        std::vector<field::CoreToMatch> wanted;
        for (const auto& [site, core] : cores) {
            wanted.push_back({site->id, core->id, folder_.listed(core->scan), field::scan_place_of(*core)});
            if (core->others.contains(field::scan_place_column) && !wanted.back().place) {
                result_.open.push_back({core->id,
                                        "its scan_place is '" + core->others.at(field::scan_place_column) + "'",
                                        "give its number on the scan, from the top or the left"});
            }
        }
        const field::ScanMatching matching =
            field::match_scans(wanted, folder_.names(), [this](const std::string& scan) { return codes_of(scan); });
        for (std::size_t i = 0; i < cores.size(); ++i) {
            take(*cores[i].second, matching.cores[i]);
        }
        for (const field::ScanLeft& left : matching.left) {
            leave(left);
        }
        return std::move(result_);
    }

private:
    /// Whether the file may be read at all: a link may lead anywhere.
    bool may_read(const fs::path& place) const {
        return record::stays_inside(place.lexically_relative(home_)) || record::is_named(place, outside_);
    }

    std::vector<field::ReadCode> codes_of(const std::string& scan) {
        const auto file = folder_.file_of(scan);
        if (!file || !may_read(record::real_place(*file))) {
            return {};
        }
        const auto read =
            ScanFile::open(file->string()).and_then([](const ScanFile& opened) { return read_codes(opened); });
        if (!read) {
            result_.open.push_back(read.error());
            return {};
        }
        std::vector<field::ReadCode> codes;
        for (const CodeOnScan& code : *read) {
            codes.push_back({code.text, code.at});
        }
        return codes;
    }

    void take(Core& core, const ScanMatch& match) {
        const std::string named = core.scan; // as the sheet has it
        const auto file = match.scan.empty() ? std::nullopt : folder_.file_of(match.scan);
        if (!file) {
            if (!match.rivals.empty()) {
                result_.open.push_back({core.id, in_a_row(match.rivals) + " all claim to be its scan",
                                        "name the right one in the column scan, or settle it in the window"});
            } else {
                result_.open.push_back({core.id,
                                        named.empty() ? "no scan is called after this core, and no code names it"
                                                      : "its scan " + named + " is not in the folder of the scans",
                                        "name it in the column scan, or settle it in the window"});
            }
            return;
        }
        const auto place = record::real_place(*file);
        if (!may_read(place)) {
            result_.open.push_back(not_named(core.id + ", " + file->filename().string(), place));
            return;
        }
        core.scan = fs::relative(*file, home_).generic_string();
        field::set_scan_place(core, match.place);
        if (paths_.insert(core.scan).second) {
            result_.of_cores.push_back({*file, core.scan});
        }
    }

    /// Notes a scan that no core has, unless it leads out of the folder.
    void leave(const field::ScanLeft& left) {
        const auto file = folder_.file_of(left.scan);
        if (!file || !may_read(record::real_place(*file))) {
            return;
        }
        std::string what = "no core has this scan";
        if (!left.says.empty()) {
            what += ", which by its name or code may be that of " + in_a_row(left.says);
        }
        result_.open.push_back({left.scan, std::move(what), "settle it in the window, if it belongs to a core"});
        std::error_code error;
        const auto bytes = static_cast<std::int64_t>(fs::file_size(*file, error));
        const std::string path = fs::relative(*file, home_, error).generic_string();
        if (!error && paths_.insert(path).second) {
            result_.left.push_back({path, bytes, {}});
        }
    }

    const ScanFolder& folder_;
    fs::path home_;
    const std::vector<fs::path>& outside_;
    std::set<std::string> paths_;
    SheetScans result_;
};

} // namespace

SheetScans take_scans(FieldSheet& sheet, const ScanFolder& folder, const fs::path& home,
                      const std::vector<fs::path>& outside) {
    return ScanTaker(folder, home, outside).take(sheet);
}

} // namespace pithward::batch
