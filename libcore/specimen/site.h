#pragma once

#include "libcore/specimen/units.h"
#include "libcore/specimen/wood.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace pithward {

/// What was seen of the pith in the field.
enum class FieldPith { Reached, Near, Missed, Unknown };

/// One increment core, as the field sheet tells of it. Identifiers are unique within a site.
struct Core {
    std::string id;         ///< As in the sheet's `core` column.
    std::string date_cored; ///< ISO 8601: a date, a year and month, or a year.
    OuterWood outer = OuterWood::Unknown;
    FieldPith pith = FieldPith::Unknown;
    std::optional<double> core_height_cm;
    std::optional<double> azimuth_deg; ///< Compass degrees of the side that the borer entered.
    std::optional<double> borer_mm;
    std::optional<int> pieces;
    std::string scan; ///< File name, or empty to match by identifier.
    std::string collector;
    std::string notes;
    std::map<std::string, std::string> others; ///< Columns that the sheet has beside the known ones.
    friend bool operator==(const Core&, const Core&) = default;
};

/// One tree.
struct Tree {
    std::string id;
    std::string species;
    std::optional<WoodType> wood;
    std::optional<bool> living;
    std::optional<double> dbh_cm;
    std::optional<double> bark_mm;
    std::optional<double> lean_azimuth_deg; ///< Compass degrees of the way the stem leans.
    std::optional<double> lean_deg;
    std::optional<double> slope_aspect_deg;
    std::vector<Core> cores;
    friend bool operator==(const Tree&, const Tree&) = default;
};

/// One site.
struct Site {
    std::string id;
    std::optional<double> latitude;
    std::optional<double> longitude;
    std::optional<double> elevation_m;
    std::vector<Tree> trees;
    friend bool operator==(const Site&, const Site&) = default;
};

} // namespace pithward
