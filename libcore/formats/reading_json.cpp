#include "libcore/formats/reading_json.h"

#include "libcore/formats/json_numbers.h"
#include "libcore/formats/text_input.h"
#include "libcore/measure/basal_area.h"
#include "libcore/measure/measure.h"

#include <algorithm>
#include <variant>

namespace pithward {

using namespace formats;
using nlohmann::ordered_json;

namespace {

ordered_json mm(Millimetres length) {
    return json_number(length.value(), millimetre_digits);
}

ordered_json mm(const std::optional<Millimetres>& length) {
    return length ? mm(*length) : ordered_json();
}

ordered_json year_or_null(const std::optional<Year>& year) {
    return year ? ordered_json(year->value()) : ordered_json();
}

ordered_json px(double value) {
    return json_number(value, pixel_digits);
}

ordered_json points_json(const std::vector<ImagePoint>& points) {
    ordered_json list = ordered_json::array();
    for (const ImagePoint& point : points) {
        list.push_back(ordered_json::array({px(point.x), px(point.y)}));
    }
    return list;
}

/// Writes one reading. Places along the path are computed by libcore/measure; the first that can't be is the fault.
class ReadingWriter {
public:
    explicit ReadingWriter(const MeasuredReading& measured)
        : reading_(measured.reading)
        , note_(measured.note)
        , series_(measured.series)
        , allowance_(measured.allowance)
        , several_legs_(measured.reading.path.legs.size() > 1) {}

    Outcome<ordered_json> json() {
        ordered_json value;
        value["scan"] =
            reading_.path.legs.empty() ? ordered_json() : ordered_json(as_utf8(reading_.path.legs.front().scan));
        value["core"] = reading_.core.empty() ? ordered_json() : ordered_json(as_utf8(reading_.core));
        if (note_) {
            add_note(value);
        }
        value["wood"] = word(reading_.wood);
        value["calibration"] = calibration(reading_.path.legs.empty() ? "" : reading_.path.legs.front().scan);
        value["bark_end"] = {{"how", as_utf8(reading_.bark_end.how)},
                             {"probability", json_number(reading_.bark_end.probability, share_digits)}};
        const bool one_leg = reading_.path.legs.size() == 1;
        value["path"] = one_leg ? points_json(reading_.path.legs.front().points) : ordered_json();
        if (several_legs_) {
            value["legs"] = legs();
        }
        value["boundaries"] = boundaries();
        value["not_annual"] = not_annual();
        value["breaks"] = breaks();
        value["rings"] = rings();
        value["outer_partial_mm"] = mm(series_.outer_partial);
        value["pith"] = pith();
        value["age"] = age();
        value["findings"] = findings();
        if (fault_) {
            return tl::unexpected(*fault_);
        }
        return value;
    }

private:
    void add_note(ordered_json& value) const {
        const auto name = [](const std::string& text) {
            return text.empty() ? ordered_json() : ordered_json(as_utf8(text));
        };
        value["site"] = name(note_->site);
        value["tree"] = name(note_->tree);
        value["analyst"] = name(reading_.analyst);
        value["state"] = word(reading_.state);
        value["review"] = {{"marked_by", name(note_->marked_by)}, {"passed_by", name(note_->passed_by)},
                           {"own_work", note_->own_work},         {"boundaries", reading_.boundaries.size()},
                           {"looked_at", note_->looked_at},       {"in_bulk", note_->in_bulk}};
    }

    ordered_json calibration(const std::string& scan) const {
        const auto found = reading_.calibrations.find(scan);
        if (found == reading_.calibrations.end()) {
            return {};
        }
        const Calibration& scale = found->second;
        return {{"px_per_mm_x", json_number(scale.px_per_mm_x, share_digits)},
                {"px_per_mm_y", json_number(scale.px_per_mm_y, share_digits)},
                {"relative_sd", json_number(scale.relative_sd, share_digits)},
                {"source", word(scale.source)}};
    }

    template <typename Items, typename IdOf>
    static ordered_json index_of(const Items& items, IdOf id) {
        const auto found = std::ranges::find_if(items, [&](const auto& item) { return item.id == id; });
        return found == items.end() ? ordered_json() : ordered_json(found - items.begin());
    }

    ordered_json join(const Join& join) const {
        if (const auto* boundary = std::get_if<JoinedAtBoundary>(&join)) {
            return {{"kind", "boundary"},
                    {"on_previous", index_of(reading_.boundaries, boundary->on_previous)},
                    {"on_this", index_of(reading_.boundaries, boundary->on_this)}};
        }
        if (const auto* at_break = std::get_if<JoinedAtBreak>(&join)) {
            return {{"kind", "break"}, {"break", index_of(reading_.breaks, at_break->at)}};
        }
        return {};
    }

    ordered_json legs() const {
        ordered_json list = ordered_json::array();
        for (const Leg& leg : reading_.path.legs) {
            list.push_back({{"scan", as_utf8(leg.scan)},
                            {"points", points_json(leg.points)},
                            {"joined_by", join(leg.joined_by)},
                            {"calibration", calibration(leg.scan)}});
        }
        return list;
    }

    ordered_json boundaries() const {
        ordered_json list = ordered_json::array();
        for (const Boundary& boundary : reading_.boundaries) {
            const PlacedBoundary* placed = placed_boundary(boundary.id);
            ordered_json flags = ordered_json::array();
            for (const Flag flag : boundary.flags) {
                flags.push_back(word(flag));
            }
            // Rounding must not carry an angle up to 180.
            const ordered_json angle = json_number(degrees(line_direction(boundary.tangent)), angle_digits);
            ordered_json value = {{"x", px(boundary.at.x)},
                                  {"y", px(boundary.at.y)},
                                  {"s_mm", placed != nullptr ? mm(placed->s) : ordered_json()},
                                  {"sd_mm", mm(boundary.sd)},
                                  {"angle_deg", angle == 180.0 ? ordered_json(0.0) : angle},
                                  {"confidence", json_number(boundary.confidence, share_digits)},
                                  {"flags", std::move(flags)},
                                  {"year", placed != nullptr ? year_or_null(placed->year) : ordered_json()},
                                  {"origin", word(boundary.origin)}};
            if (note_) {
                value["confirmed"] = word(boundary.confirmation);
            }
            add_leg(value, boundary.leg);
            list.push_back(std::move(value));
        }
        return list;
    }

    ordered_json not_annual() {
        ordered_json list = ordered_json::array();
        for (const Candidate& candidate : reading_.not_annual) {
            ordered_json value = {{"x", px(candidate.at.x)},
                                  {"y", px(candidate.at.y)},
                                  {"s_mm", mm(along(candidate.leg, candidate.at))},
                                  {"confidence", json_number(candidate.confidence, share_digits)},
                                  {"reason", as_utf8(candidate.reason)}};
            add_leg(value, candidate.leg);
            list.push_back(std::move(value));
        }
        return list;
    }

    ordered_json breaks() {
        ordered_json list = ordered_json::array();
        for (const Break& stretch : reading_.breaks) {
            ordered_json value = {
                {"from_mm", mm(along(stretch.leg, stretch.from))},
                {"to_mm", mm(along(stretch.leg, stretch.to))},
                {"kind", word(stretch.kind)},
                {"rings_lost", stretch.rings_lost ? ordered_json(*stretch.rings_lost) : ordered_json()}};
            add_leg(value, stretch.leg);
            list.push_back(std::move(value));
        }
        return list;
    }

    ordered_json rings() const {
        ordered_json list = ordered_json::array();
        const auto areas = basal_area_increments(reading_, series_);
        const auto area = [&](std::size_t i, double BasalAreaIncrement::*which) {
            return areas[i] ? json_number((*areas[i]).*which, millimetre_digits) : ordered_json();
        };
        for (std::size_t i = 0; i < series_.rings.size(); ++i) {
            const Ring& ring = series_.rings[i];
            list.push_back({{"year", year_or_null(ring.year)},
                            {"ring", ring.number},
                            {"width_mm", mm(ring.width)},
                            {"along_path_mm", mm(ring.along_path)},
                            {"sd_mm", ring.width ? mm(ring.sd) : ordered_json()},
                            {"absent", ring.absent},
                            {"earlywood_mm", mm(ring.earlywood)},
                            {"latewood_mm", mm(ring.latewood)},
                            {"basal_area_mm2", area(i, &BasalAreaIncrement::mm2)},
                            {"basal_area_low_mm2", area(i, &BasalAreaIncrement::low_mm2)},
                            {"basal_area_high_mm2", area(i, &BasalAreaIncrement::high_mm2)}});
        }
        return list;
    }

    ordered_json pith() const {
        if (!reading_.pith) {
            return {};
        }
        const Pith& pith = *reading_.pith;
        ordered_json others = ordered_json::array();
        for (const OtherPith& other : pith.others) {
            others.push_back({{"method", as_utf8(other.method)},
                              {"distance_mm", mm(other.distance)},
                              {"distance_low_mm", mm(other.distance_low)},
                              {"distance_high_mm", mm(other.distance_high)},
                              {"missing_rings", other.missing_rings}});
        }
        return {{"inside", pith.inside},
                {"x", px(pith.at.x)},
                {"y", px(pith.at.y)},
                {"distance_mm", mm(pith.distance)},
                {"distance_low_mm", mm(pith.distance_low)},
                {"distance_high_mm", mm(pith.distance_high)},
                {"missing_rings", pith.missing_rings},
                {"missing_low", pith.missing_low},
                {"missing_high", pith.missing_high},
                {"how", word(pith.source)},
                {"other_methods", std::move(others)}};
    }

    ordered_json age() const {
        const auto known = age_of(reading_, series_, allowance_);
        if (!known) {
            return {};
        }
        ordered_json value;
        const auto add = [&](const std::string& key, const std::optional<YearRange>& range) {
            value[key] = range ? ordered_json(range->year.value()) : ordered_json();
            value[key + "_low"] = range ? ordered_json(range->low.value()) : ordered_json();
            value[key + "_high"] = range ? ordered_json(range->high.value()) : ordered_json();
        };
        add("pith_year", known->pith);
        value["years_to_height"] = allowance_ ? json_number(allowance_->years, millimetre_digits) : ordered_json();
        value["years_to_height_sd"] = allowance_ ? json_number(allowance_->sd, millimetre_digits) : ordered_json();
        add("establishment_year", known->establishment);
        return value;
    }

    ordered_json findings() {
        ordered_json list = ordered_json::array();
        for (const Finding& finding : reading_.findings) {
            const Millimetres from = along(finding.leg, finding.at);
            const Millimetres to = finding.to ? along(finding.leg, *finding.to) : from;
            ordered_json value = {{"kind", word(finding.kind)}, {"s_mm", mm(from)}};
            if (finding.to) {
                value["s_mm_to"] = mm(to);
            }
            value["year"] = year_or_null(year_of(finding, 0.5 * (from + to)));
            value["reason"] = as_utf8(finding.reason);
            value["proposal"] = as_utf8(finding.proposal);
            value["probability"] = json_number(finding.probability, share_digits);
            if (note_) {
                value["state"] = word(finding.state);
                value["comment"] = as_utf8(finding.comment);
                value["verdict"] = word(finding.verdict);
            }
            add_leg(value, finding.leg);
            list.push_back(std::move(value));
        }
        return list;
    }

    /// The year of the boundary that a finding is about, else of the ring in which its middle lies.
    std::optional<Year> year_of(const Finding& finding, Millimetres middle) const {
        if (finding.boundary) {
            const PlacedBoundary* placed = placed_boundary(*finding.boundary);
            return placed != nullptr ? placed->year : std::nullopt;
        }
        const auto beyond = std::ranges::find_if(series_.boundaries, [&](const auto& b) { return b.s > middle; });
        return beyond == series_.boundaries.begin() ? std::nullopt : std::prev(beyond)->year;
    }

    const PlacedBoundary* placed_boundary(BoundaryId id) const {
        const auto found = std::ranges::find(series_.boundaries, id, &PlacedBoundary::id);
        return found == series_.boundaries.end() ? nullptr : &*found;
    }

    Millimetres along(std::size_t leg, ImagePoint at) {
        const auto s = place_on_path(reading_, leg, at);
        if (!s && !fault_) {
            fault_ = s.error();
        }
        return s ? *s : Millimetres();
    }

    void add_leg(ordered_json& value, std::size_t leg) const {
        if (several_legs_) {
            value["leg"] = leg;
        }
    }

    const Reading& reading_;
    const std::optional<ProjectNote>& note_;
    const RingSeries& series_;
    const std::optional<HeightAllowance>& allowance_;
    bool several_legs_;
    std::optional<Fault> fault_;
};

} // namespace

Outcome<void> write_readings_json(std::ostream& out, std::span<const MeasuredReading> readings,
                                  std::span<const std::string> headers) {
    ordered_json list = ordered_json::array();
    for (const MeasuredReading& measured : readings) {
        auto value = ReadingWriter(measured).json();
        if (!value) {
            return tl::unexpected(std::move(value.error()));
        }
        list.push_back(std::move(*value));
    }
    ordered_json root;
    for (const std::string& header : headers) {
        root["headers"].push_back(as_utf8(header));
    }
    root["readings"] = std::move(list);
    out << root.dump(1) << '\n';
    return {};
}

} // namespace pithward
