#include "libcore/edit/json_values.h"

#include "libcore/edit/json_fields.h"

#include <numbers>

namespace pithward::exact_json {

namespace {

constexpr double most_px_per_mm = 100'000.0;
constexpr int outermost_year = 100'000;

/// What a boundary and a candidate have in common.
template <typename T>
Json write_mark(const T& mark) {
    Json flags = Json::array();
    for (const Flag flag : mark.flags) {
        flags.push_back(word(flag));
    }
    Json json = {{"id", mark.id.value},      {"leg", mark.leg},       {"at", write(mark.at)},
                 {"tangent", mark.tangent},  {"sd", mark.sd.value()}, {"confidence", mark.confidence},
                 {"flags", std::move(flags)}};
    if (!mark.curve.empty()) {
        json["curve"] = write(mark.curve);
    }
    if (mark.latewood) {
        json["latewood"] = mark.latewood->value();
    }
    return json;
}

template <typename T>
void read_mark(const Json& json, T& mark) {
    mark.id.value = id(json);
    mark.leg = leg(json);
    mark.at = point(json, "at");
    mark.tangent = number(json, "tangent", -2.0 * std::numbers::pi, 2.0 * std::numbers::pi);
    mark.sd = length(json, "sd");
    mark.confidence = probability(json, "confidence");
    mark.flags.clear();
    for (const Json& flag : list(json, "flags")) {
        const auto known = flag.is_string() ? flag_from(flag.get_ref<const std::string&>()) : std::nullopt;
        if (!known) {
            throw Malformed{"the field flags holds an unknown word"};
        }
        mark.flags.insert(*known);
    }
    mark.curve = optional_field(json, "curve") != nullptr ? points(json, "curve") : std::vector<ImagePoint>{};
    mark.latewood = optional_length(json, "latewood");
}

std::string optional_text(const Json& json, const char* key) {
    return optional_field(json, key) != nullptr ? text(json, key) : std::string();
}

Json write_change(const ProposedChange& change) {
    if (const auto* boundary = std::get_if<ProposeBoundary>(&change)) {
        return {{"boundary", write(boundary->boundary)}};
    }
    if (const auto* removal = std::get_if<ProposeRemoval>(&change)) {
        return {{"removal", removal->boundary.value}};
    }
    if (const auto* absent = std::get_if<ProposeAbsentRing>(&change)) {
        return {{"absent_ring_at", absent->at.value}};
    }
    if (const auto* gone = std::get_if<ProposeBreak>(&change)) {
        return {{"break", write(gone->stretch)}};
    }
    return {};
}

ProposedChange read_change(const Json* json) {
    if (json == nullptr) {
        return std::monostate();
    }
    if (const Json* boundary = optional_field(*json, "boundary")) {
        ProposeBoundary proposed;
        read(*boundary, proposed.boundary);
        return proposed;
    }
    if (const Json* gone = optional_field(*json, "break")) {
        ProposeBreak proposed;
        read(*gone, proposed.stretch);
        return proposed;
    }
    if (optional_field(*json, "removal") != nullptr) {
        return ProposeRemoval{BoundaryId{id(*json, "removal")}};
    }
    return ProposeAbsentRing{BoundaryId{id(*json, "absent_ring_at")}};
}

Json write_join(const Join& join) {
    if (const auto* boundary = std::get_if<JoinedAtBoundary>(&join)) {
        return {{"on_previous", boundary->on_previous.value}, {"on_this", boundary->on_this.value}};
    }
    if (const auto* at_break = std::get_if<JoinedAtBreak>(&join)) {
        return {{"break", at_break->at.value}};
    }
    return {};
}

Join read_join(const Json* json) {
    if (json == nullptr) {
        return std::monostate();
    }
    if (optional_field(*json, "break") != nullptr) {
        return JoinedAtBreak{BreakId{id(*json, "break")}};
    }
    return JoinedAtBoundary{BoundaryId{id(*json, "on_previous")}, BoundaryId{id(*json, "on_this")}};
}

Json write_pith(const Pith& pith) {
    Json others = Json::array();
    for (const OtherPith& other : pith.others) {
        others.push_back({{"method", other.method},
                          {"distance", other.distance.value()},
                          {"low", other.distance_low.value()},
                          {"high", write(other.distance_high)},
                          {"missing_rings", other.missing_rings}});
    }
    return {{"inside", pith.inside},
            {"at", write(pith.at)},
            {"distance", pith.distance.value()},
            {"low", pith.distance_low.value()},
            {"high", pith.distance_high.value()},
            {"missing_rings", pith.missing_rings},
            {"missing_low", pith.missing_low},
            {"missing_high", pith.missing_high},
            {"source", word(pith.source)},
            {"others", std::move(others)}};
}

int ring_count(const Json& json, const char* key) {
    return static_cast<int>(whole(json, key, -outermost_year, outermost_year));
}

Pith read_pith(const Json& json) {
    Pith pith;
    pith.inside = truth(json, "inside");
    pith.at = point(json, "at");
    pith.distance = length(json, "distance");
    pith.distance_low = length(json, "low");
    pith.distance_high = length(json, "high");
    pith.missing_rings = ring_count(json, "missing_rings");
    pith.missing_low = ring_count(json, "missing_low");
    pith.missing_high = ring_count(json, "missing_high");
    if (optional_field(json, "source") != nullptr) { // older projects don't tell
        pith.source = one_of(json, "source", {Pith::Source::Curves, Pith::Source::Seen, Pith::Source::Hand});
    }
    for (const Json& other : list(json, "others")) {
        pith.others.push_back({text(other, "method"), length(other, "distance"), length(other, "low"),
                               optional_length(other, "high"), ring_count(other, "missing_rings")});
    }
    return pith;
}

} // namespace

Json write(const Boundary& boundary) {
    Json json = write_mark(boundary);
    json["sd_assumed"] = boundary.sd_assumed;
    json["origin"] = word(boundary.origin);
    json["confirmation"] = word(boundary.confirmation);
    if (!boundary.note.empty()) {
        json["note"] = boundary.note;
    }
    return json;
}

void read(const Json& json, Boundary& boundary) {
    read_mark(json, boundary);
    boundary.sd_assumed = truth(json, "sd_assumed");
    boundary.origin = one_of(json, "origin", {Origin::Program, Origin::Analyst});
    boundary.confirmation =
        one_of(json, "confirmation", {Confirmation::None, Confirmation::LookedAt, Confirmation::InBulk});
    boundary.note = optional_text(json, "note");
}

Json write(const Candidate& candidate) {
    Json json = write_mark(candidate);
    json["reason"] = candidate.reason;
    return json;
}

void read(const Json& json, Candidate& candidate) {
    read_mark(json, candidate);
    candidate.reason = text(json, "reason");
}

Json write(const Break& stretch) {
    return {{"id", stretch.id.value},      {"leg", stretch.leg},
            {"from", write(stretch.from)}, {"to", write(stretch.to)},
            {"kind", word(stretch.kind)},  {"rings_lost", stretch.rings_lost ? Json(*stretch.rings_lost) : Json()},
            {"note", stretch.note}};
}

void read(const Json& json, Break& stretch) {
    stretch.id.value = id(json);
    stretch.leg = leg(json);
    stretch.from = point(json, "from");
    stretch.to = point(json, "to");
    stretch.kind = one_of(json, "kind", {Break::Kind::Crack, Break::Kind::LostWood});
    stretch.rings_lost = optional_field(json, "rings_lost") != nullptr
                             ? std::optional(static_cast<int>(whole(json, "rings_lost", 0, outermost_year)))
                             : std::nullopt;
    stretch.note = text(json, "note");
}

Json write(const AbsentRing& ring) {
    return {{"id", ring.id.value}, {"at", ring.at.value}, {"origin", word(ring.origin)}, {"note", ring.note}};
}

void read(const Json& json, AbsentRing& ring) {
    ring.id.value = id(json);
    ring.at.value = id(json, "at");
    ring.origin = one_of(json, "origin", {Origin::Program, Origin::Analyst});
    ring.note = text(json, "note");
}

Json write(const Finding& finding) {
    return {{"id", finding.id.value},
            {"kind", word(finding.kind)},
            {"leg", finding.leg},
            {"at", write(finding.at)},
            {"to", write(finding.to)},
            {"boundary", finding.boundary ? Json(finding.boundary->value) : Json()},
            {"reason", finding.reason},
            {"proposal", finding.proposal},
            {"change", write_change(finding.change)},
            {"probability", finding.probability},
            {"state", word(finding.state)},
            {"comment", finding.comment},
            {"verdict", word(finding.verdict)}};
}

void read(const Json& json, Finding& finding) {
    using State = Finding::State;
    finding.id.value = id(json);
    const auto kind = finding_kind_from(text(json, "kind"));
    if (!kind) {
        throw Malformed{"the field kind holds an unknown word"};
    }
    finding.kind = *kind;
    finding.leg = leg(json);
    finding.at = point(json, "at");
    finding.to = optional_point(json, "to");
    finding.boundary =
        optional_field(json, "boundary") != nullptr ? std::optional(BoundaryId{id(json, "boundary")}) : std::nullopt;
    finding.reason = text(json, "reason");
    finding.proposal = text(json, "proposal");
    finding.change = read_change(optional_field(json, "change"));
    finding.probability = probability(json, "probability");
    finding.state = one_of(json, "state", {State::Open, State::ProposalTaken, State::KeptAsItIs, State::CannotBeTold});
    finding.comment = text(json, "comment");
    // Projects from before there were verdicts have none.
    finding.verdict = optional_field(json, "verdict") == nullptr
                          ? Verdict::None
                          : one_of(json, "verdict", {Verdict::None, Verdict::Passed, Verdict::Returned});
}

Json write(const Path& path) {
    Json legs = Json::array();
    for (const Leg& one : path.legs) {
        legs.push_back({{"scan", one.scan}, {"points", write(one.points)}, {"joined_by", write_join(one.joined_by)}});
    }
    return {{"legs", std::move(legs)}};
}

void read(const Json& json, Path& path) {
    path.legs.clear();
    for (const Json& one : list(json, "legs")) {
        path.legs.push_back({text(one, "scan"), points(one, "points"), read_join(optional_field(one, "joined_by"))});
    }
}

Json write(const Calibration& calibration) {
    return {{"px_per_mm_x", calibration.px_per_mm_x},
            {"px_per_mm_y", calibration.px_per_mm_y},
            {"relative_sd", calibration.relative_sd},
            {"source", word(calibration.source)}};
}

void read(const Json& json, Calibration& calibration) {
    using Source = Calibration::Source;
    calibration.px_per_mm_x = number(json, "px_per_mm_x", 0.0, most_px_per_mm);
    calibration.px_per_mm_y = number(json, "px_per_mm_y", 0.0, most_px_per_mm);
    calibration.relative_sd = number(json, "relative_sd", 0.0, 1.0);
    calibration.source = one_of(json, "source", {Source::FileTag, Source::Given, Source::Ruler});
}

Json write(const ReadingHead& head) {
    return {{"analyst", head.analyst},
            {"state", word(head.state)},
            {"wood", word(head.wood)},
            {"outer", word(head.outer)},
            {"last_year", head.last_year ? Json(head.last_year->value()) : Json()},
            {"bark_end", {{"how", head.bark_end.how}, {"probability", head.bark_end.probability}}},
            {"wood_edge", write(head.wood_edge)},
            {"pith", head.pith ? write_pith(*head.pith) : Json()},
            {"note", head.note}};
}

void read(const Json& json, ReadingHead& head) {
    using State = Reading::State;
    head.analyst = text(json, "analyst");
    head.state = one_of(json, "state", {State::Proposed, State::Marked, State::Passed, State::Returned});
    const auto wood = wood_type_from(text(json, "wood"));
    const auto outer = outer_wood_from(text(json, "outer"));
    if (!wood || !outer) {
        throw Malformed{"the fields wood and outer hold an unknown word"};
    }
    head.wood = *wood;
    head.outer = *outer;
    head.last_year = optional_field(json, "last_year") != nullptr ? std::optional(Year(ring_count(json, "last_year")))
                                                                  : std::nullopt;
    const Json& bark = field(json, "bark_end");
    head.bark_end = {text(bark, "how"), probability(bark, "probability")};
    head.wood_edge = optional_point(json, "wood_edge");
    const Json* pith = optional_field(json, "pith");
    head.pith = pith != nullptr ? std::optional(read_pith(*pith)) : std::nullopt;
    head.note = text(json, "note");
}

} // namespace pithward::exact_json
