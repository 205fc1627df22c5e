#include "libcore/field/scan_matching.h"

#include "libcore/field/core_code.h"

#include <algorithm>
#include <map>
#include <set>

namespace pithward::field {

namespace {

std::string stem_of(const std::string& file) {
    const std::string name = file.substr(file.find_last_of('/') + 1);
    const std::size_t dot = name.find_last_of('.');
    return dot == std::string::npos || dot == 0 ? name : name.substr(0, dot);
}

class Matcher {
public:
    Matcher(std::span<const CoreToMatch> cores, std::span<const std::string> scans,
            const std::function<std::vector<ReadCode>(const std::string&)>& codes)
        : cores_(cores)
        , scans_(scans)
        , codes_(codes)
        , matches_(cores.size()) {
        for (std::size_t i = 0; i < cores.size(); ++i) {
            const CodeNames names{cores[i].site, cores[i].core};
            by_code_text_[core_code(names)].insert(i);
            by_code_text_[former_core_code(names)].insert(i);
        }
    }

    ScanMatching matched() {
        by_sheet();
        by_name();
        by_code();
        place_cores();
        return {matches_, left()};
    }

private:
    void by_sheet() {
        for (std::size_t i = 0; i < cores_.size(); ++i) {
            if (!cores_[i].scan.empty()) {
                matches_[i].scan = cores_[i].scan;
                users_[cores_[i].scan].push_back(i);
            }
        }
    }

    /// Of the cores that the sheet names no scan for, by their identifier: one that two sites have tells nothing.
    void by_name() {
        std::map<std::string, std::vector<std::size_t>> named;
        for (std::size_t i = 0; i < cores_.size(); ++i) {
            if (cores_[i].scan.empty()) {
                named[cores_[i].core].push_back(i);
            }
        }
        std::map<std::size_t, std::vector<std::string>> claims;
        for (const std::string& scan : scans_) {
            const auto found = named.find(stem_of(scan));
            if (users_.contains(scan) || found == named.end()) {
                continue;
            }
            for (const std::size_t core : found->second) {
                says_[scan].insert(core);
            }
            if (found->second.size() == 1) {
                claims[found->second.front()].push_back(scan);
            }
        }
        take(claims, false);
    }

    /// What no name settles, by the codes on the mount.
    void by_code() {
        std::map<std::size_t, std::vector<std::string>> claims;
        for (const std::string& scan : scans_) {
            if (users_.contains(scan)) {
                continue;
            }
            for (const std::size_t core : cores_with_codes_on(scan)) {
                says_[scan].insert(core);
                if (matches_[core].scan.empty()) {
                    claims[core].push_back(scan);
                }
            }
        }
        take(claims, true);
    }

    void take(const std::map<std::size_t, std::vector<std::string>>& claims, bool by_code) {
        for (const auto& [core, scans] : claims) {
            ScanMatch& match = matches_[core];
            if (scans.size() == 1 && match.rivals.empty()) {
                match.scan = scans.front();
                match.by_code = by_code;
                users_[match.scan].push_back(core);
                continue;
            }
            for (const std::string& scan : scans) {
                if (std::ranges::find(match.rivals, scan) == match.rivals.end()) {
                    match.rivals.push_back(scan);
                }
            }
        }
    }

    const std::vector<ReadCode>& codes_on(const std::string& scan) {
        const auto [entry, is_new] = read_.try_emplace(scan);
        if (is_new) {
            entry->second = codes_(scan);
        }
        return entry->second;
    }

    /// Where the one code of a core lies on a scan; nothing where there is none, or several.
    std::optional<ImagePoint> code_of(std::size_t core, const std::string& scan) {
        std::optional<ImagePoint> at;
        for (const ReadCode& code : codes_on(scan)) {
            const auto meant = by_code_text_.find(code.text);
            if (meant != by_code_text_.end() && meant->second == std::set{core}) {
                if (at) {
                    return std::nullopt;
                }
                at = code.at;
            }
        }
        return at;
    }

    std::set<std::size_t> cores_with_codes_on(const std::string& scan) {
        std::set<std::size_t> found;
        for (const ReadCode& code : codes_on(scan)) {
            const auto meant = by_code_text_.find(code.text);
            // A former code with a / in its names may mean two.
            if (meant != by_code_text_.end() && meant->second.size() == 1) {
                found.insert(*meant->second.begin());
            }
        }
        return found;
    }

    /// What the sheet tells of its cores' places holds; else the codes or the order tell them.
    void place_cores() {
        for (auto& [scan, users] : users_) {
            std::ranges::sort(users); // the order of the sheet
            const bool told = std::ranges::any_of(users, [&](std::size_t i) { return cores_[i].place.has_value(); });
            if (told || users.size() == 1) {
                for (const std::size_t i : users) {
                    matches_[i].place = cores_[i].place;
                }
                continue;
            }
            std::vector<std::optional<ImagePoint>> places;
            for (const std::size_t i : users) {
                places.push_back(code_of(i, scan));
            }
            const bool all_have_codes =
                std::ranges::all_of(places, [](const std::optional<ImagePoint>& at) { return at.has_value(); });
            for (std::size_t k = 0; k < users.size(); ++k) {
                matches_[users[k]].place = all_have_codes ? ScanPlace(*places[k]) : ScanPlace(static_cast<int>(k) + 1);
            }
        }
    }

    std::vector<ScanLeft> left() {
        std::vector<ScanLeft> scans;
        for (const std::string& scan : scans_) {
            if (users_.contains(scan)) {
                continue;
            }
            ScanLeft one{scan, {}};
            for (const std::size_t core : says_[scan]) {
                one.says.push_back(core_code({cores_[core].site, cores_[core].core}));
            }
            scans.push_back(std::move(one));
        }
        return scans;
    }

    std::span<const CoreToMatch> cores_;
    std::span<const std::string> scans_;
    const std::function<std::vector<ReadCode>(const std::string&)>& codes_;
    std::vector<ScanMatch> matches_;
    std::map<std::string, std::set<std::size_t>> by_code_text_; ///< The cores that a code may mean.
    std::map<std::string, std::vector<std::size_t>> users_;     ///< The cores of each scan.
    std::map<std::string, std::set<std::size_t>> says_;
    std::map<std::string, std::vector<ReadCode>> read_;
};

} // namespace

ScanMatching match_scans(std::span<const CoreToMatch> cores, std::span<const std::string> scans,
                         const std::function<std::vector<ReadCode>(const std::string& scan)>& codes) {
    return Matcher(cores, scans, codes).matched();
}

} // namespace pithward::field
