#pragma once

#include "libcore/field/scan_place.h"
#include "libcore/specimen/units.h"

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace pithward::field {

/// A core that wants a scan, as a row of the field sheet tells of it.
struct CoreToMatch {
    std::string site;
    std::string core;
    std::string scan;               ///< What the column `scan` names; empty where it names none.
    std::optional<ScanPlace> place; ///< What the sheet tells of it.
};

/// A code that was read on a scan, and where.
struct ReadCode {
    std::string text;
    ImagePoint at;
};

/// A scan for a core.
struct ScanMatch {
    std::string scan; ///< Empty where none was found.
    std::optional<ScanPlace> place;
    bool by_code = false;            ///< By the code on the mount, not by a name.
    std::vector<std::string> rivals; ///< Scans that all claim to be this core's: none of them is taken.
    friend bool operator==(const ScanMatch&, const ScanMatch&) = default;
};

/// A scan that no core has, with what it says.
struct ScanLeft {
    std::string scan;
    std::vector<std::string> says; ///< Cores that its codes name, as "SITE/CORE", or that it is called after.
    friend bool operator==(const ScanLeft&, const ScanLeft&) = default;
};

struct ScanMatching {
    std::vector<ScanMatch> cores; ///< In the order of the cores.
    std::vector<ScanLeft> left;   ///< In the order of the scans.
};

/// Finds each core's scan: the one that the sheet names, else the one called after the core, else the one whose code
/// names it. Of several cores on one scan each gets its place: that of its code, where all of them have one, else its
/// number in the order of the sheet. What two scans claim, or two cores by one name, is nobody's and told. `scans` are
/// names of files; `codes` is asked only for scans that a name doesn't settle, once each.
[[nodiscard]] ScanMatching match_scans(std::span<const CoreToMatch> cores, std::span<const std::string> scans,
                                       const std::function<std::vector<ReadCode>(const std::string& scan)>& codes);

} // namespace pithward::field
