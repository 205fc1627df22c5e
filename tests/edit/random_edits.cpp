#include "tests/edit/random_edits.h"

#include "libcore/edit/apply.h"
#include "libcore/edit/boundary_edits.h"
#include "libcore/edit/edits_between.h"
#include "libcore/edit/finding_edits.h"
#include "libcore/edit/reading_edits.h"
#include "libcore/edit/reading_head.h"
#include "tests/measure/straight_reading.h"

#include <algorithm>
#include <cmath>

namespace pithward::test {

namespace {

double between(std::mt19937& random, double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random);
}

int below(std::mt19937& random, int count) {
    return std::uniform_int_distribution<int>(0, count - 1)(random);
}

bool often(std::mt19937& random, double share) {
    return between(random, 0.0, 1.0) < share;
}

template <typename T>
const T* any_of(const std::vector<T>& list, std::mt19937& random) {
    return list.empty() ? nullptr : &list[static_cast<std::size_t>(below(random, static_cast<int>(list.size())))];
}

std::string any_text(std::mt19937& random) {
    static const std::vector<std::string> texts{"",     "a note", "quote \" and \\ and \n line", "Gr\u00fcn",
                                                "\x01", "=1+1",   std::string("zero\0byte", 9)};
    return *any_of(texts, random);
}

double any_number(std::mt19937& random) {
    static const std::vector<double> odd{0.0, -0.0, 0.1, 1.0 / 3.0, 1e-300, 5e-324, 123456.789012345678, -99999.5};
    return often(random, 0.3) ? *any_of(odd, random) : between(random, -20'000.0, 20'000.0);
}

ImagePoint any_point(std::mt19937& random) {
    return {any_number(random), any_number(random)};
}

std::vector<ImagePoint> any_points(std::mt19937& random) {
    std::vector<ImagePoint> points;
    for (int n = below(random, 5); n > 0; --n) {
        points.push_back(any_point(random));
    }
    return points;
}

template <typename T>
std::optional<T> perhaps(std::mt19937& random, T value) {
    return often(random, 0.5) ? std::optional<T>(std::move(value)) : std::nullopt;
}

template <typename T>
void fill_mark(T& mark, std::mt19937& random) {
    mark.id.value = below(random, 1'000'000);
    mark.leg = static_cast<std::size_t>(below(random, 4));
    mark.at = any_point(random);
    mark.tangent = between(random, 0.0, 3.14);
    mark.sd = Millimetres(between(random, 0.0, 1.0));
    mark.confidence = between(random, 0.0, 1.0);
    if (often(random, 0.4)) {
        mark.flags = {Flag::Faint, Flag::NearBreak};
    }
    mark.curve = any_points(random);
    mark.latewood = perhaps(random, Millimetres(between(random, 0.0, 3.0)));
}

void fill(Boundary& boundary, std::mt19937& random) {
    fill_mark(boundary, random);
    boundary.sd_assumed = often(random, 0.5);
    boundary.origin = often(random, 0.5) ? Origin::Analyst : Origin::Program;
    boundary.confirmation = static_cast<Confirmation>(below(random, 3));
    boundary.note = any_text(random);
}

void fill(Candidate& candidate, std::mt19937& random) {
    fill_mark(candidate, random);
    candidate.reason = any_text(random);
}

void fill(Break& stretch, std::mt19937& random) {
    stretch.id.value = below(random, 1000);
    stretch.leg = static_cast<std::size_t>(below(random, 3));
    stretch.from = any_point(random);
    stretch.to = any_point(random);
    stretch.kind = often(random, 0.5) ? Break::Kind::Crack : Break::Kind::LostWood;
    stretch.rings_lost = perhaps(random, below(random, 30));
    stretch.note = any_text(random);
}

void fill(AbsentRing& ring, std::mt19937& random) {
    ring.id.value = below(random, 1000);
    ring.at.value = below(random, 1000);
    ring.origin = often(random, 0.5) ? Origin::Analyst : Origin::Program;
    ring.note = any_text(random);
}

ProposedChange any_change(std::mt19937& random) {
    switch (below(random, 5)) {
    case 0: {
        ProposeBoundary proposed;
        fill(proposed.boundary, random);
        return proposed;
    }
    case 1:
        return ProposeRemoval{BoundaryId{below(random, 1000)}};
    case 2:
        return ProposeAbsentRing{BoundaryId{below(random, 1000)}};
    case 3: {
        ProposeBreak proposed;
        fill(proposed.stretch, random);
        return proposed;
    }
    default:
        return std::monostate();
    }
}

void fill(Finding& finding, std::mt19937& random) {
    finding.id.value = below(random, 1000);
    finding.kind = static_cast<FindingKind>(below(random, 12));
    finding.leg = static_cast<std::size_t>(below(random, 3));
    finding.at = any_point(random);
    finding.to = perhaps(random, any_point(random));
    finding.boundary = perhaps(random, BoundaryId{below(random, 1000)});
    finding.reason = any_text(random);
    finding.proposal = any_text(random);
    finding.change = any_change(random);
    finding.probability = between(random, 0.0, 1.0);
    finding.state = static_cast<Finding::State>(below(random, 4));
    finding.comment = any_text(random);
    finding.verdict = static_cast<Verdict>(below(random, 3));
}

void fill(ReadingHead& head, std::mt19937& random) {
    head.analyst = any_text(random);
    head.state = static_cast<Reading::State>(below(random, 4));
    head.wood = static_cast<WoodType>(below(random, 3));
    head.outer = static_cast<OuterWood>(below(random, 4));
    head.last_year = perhaps(random, Year(below(random, 4000) - 2000));
    head.bark_end = {any_text(random), between(random, 0.0, 1.0)};
    head.wood_edge = perhaps(random, any_point(random));
    Pith pith = pith_at(between(random, 0.0, 40.0));
    pith.distance = Millimetres(between(random, 0.0, 9.0));
    pith.missing_high = below(random, 9);
    pith.source = below(random, 2) == 0 ? Pith::Source::Hand : Pith::Source::Seen;
    pith.others = {{any_text(random), Millimetres(1.0), Millimetres(0.5), perhaps(random, Millimetres(2.0)), 3}};
    head.pith = perhaps(random, std::move(pith));
    head.note = any_text(random);
}

void fill(Path& path, std::mt19937& random) {
    path.legs = {{any_text(random), any_points(random), {}},
                 {"b.tif", any_points(random), JoinedAtBoundary{BoundaryId{3}, BoundaryId{4}}},
                 {"c.tif", {}, JoinedAtBreak{BreakId{7}}}};
}

template <typename T>
T filled(std::mt19937& random) {
    T value;
    fill(value, random);
    return value;
}

template <typename T>
Edit any_of_object(std::mt19937& random) {
    switch (below(random, 3)) {
    case 0:
        return {Added<T>{filled<T>(random)}};
    case 1:
        return {Removed<T>{filled<T>(random)}};
    default:
        return {Changed<T>{filled<T>(random), filled<T>(random)}};
    }
}

Calibration any_scale(std::mt19937& random) {
    return {between(random, 10.0, 100.0), between(random, 10.0, 100.0), 0.001,
            static_cast<Calibration::Source>(below(random, 3))};
}

} // namespace

Reading random_reading(std::mt19937& random) {
    std::vector<double> places;
    for (double s = 1.0; s < 36.0; s += between(random, 0.3, 4.0)) {
        places.push_back(s);
    }
    Reading reading = straight_reading(places);
    reading.last_year = Year(2020);
    for (Boundary& boundary : reading.boundaries) {
        boundary.confidence = between(random, 0.0, 1.0);
    }
    for (int n = below(random, 4); n > 0; --n) {
        Candidate candidate = filled<Candidate>(random);
        candidate.id = {};
        candidate.leg = 0;
        candidate.at = on_straight_path(between(random, 0.0, 40.0));
        reading.not_annual.push_back(std::move(candidate));
        reading.breaks.push_back(break_at(between(random, 0.0, 20.0), between(random, 20.0, 40.0), Break::Kind::Crack));
        Finding finding = filled<Finding>(random);
        finding.id = {};
        finding.leg = 0;
        finding.state = Finding::State::Open;
        finding.change = ProposeRemoval{any_of(reading.boundaries, random)->id};
        reading.findings.push_back(std::move(finding));
        reading.absent_rings.push_back(absent_at(any_of(reading.boundaries, random)->id.value));
    }
    return *readied(std::move(reading));
}

Edit random_edit(const Document& document, std::mt19937& random) {
    const Reading& reading = document.reading();
    const std::int64_t fresh = document.fresh_id();
    BoundaryPlace place;
    place.at = on_straight_path(between(random, 0.0, 40.0));
    place.tangent = between(random, 0.0, 3.0);
    const Boundary* boundary = any_of(reading.boundaries, random);
    const BoundaryId id = boundary != nullptr ? boundary->id : BoundaryId{fresh};
    const Edit nothing{EditGroup{}};
    switch (below(random, 17)) {
    case 0:
        return confirm(reading, id).value_or(nothing);
    case 1:
        return confirm_above(reading, between(random, 0.5, 1.0));
    case 2:
        return add_boundary(place, BoundaryId{fresh});
    case 3:
        return delete_boundary(reading, id).value_or(nothing);
    case 4:
        if (boundary != nullptr && often(random, 0.7)) {
            place.at = {boundary->at.x + between(random, -20.0, 20.0), boundary->at.y};
        }
        return move_boundary(reading, id, place).value_or(nothing);
    case 5:
        return turn_boundary(reading, id, between(random, -4.0, 7.0)).value_or(nothing);
    case 6:
        return mark_as_false_ring(reading, id, CandidateId{fresh}, "two soft edges").value_or(nothing);
    case 7: {
        const Candidate* candidate = any_of(reading.not_annual, random);
        return candidate == nullptr ? nothing
                                    : take_candidate(reading, candidate->id, BoundaryId{fresh}).value_or(nothing);
    }
    case 8:
        return annotate(reading, id, any_text(random)).value_or(nothing);
    case 9:
        return add_absent_ring(reading, id, AbsentRingId{fresh}).value_or(nothing);
    case 10: {
        const AbsentRing* ring = any_of(reading.absent_rings, random);
        return ring == nullptr ? nothing : remove_absent_ring(reading, ring->id).value_or(nothing);
    }
    case 11: {
        Break stretch = break_at(between(random, 0.0, 40.0), between(random, 0.0, 40.0), Break::Kind::LostWood);
        stretch.id = BreakId{fresh};
        return add_break(stretch);
    }
    case 12: {
        const Break* stretch = any_of(reading.breaks, random);
        if (stretch == nullptr) {
            return {EditGroup{}};
        }
        Break after = *stretch;
        after.from = on_straight_path(between(random, 0.0, 40.0));
        return (often(random, 0.5) ? change_break(reading, after) : remove_break(reading, stretch->id))
            .value_or(nothing);
    }
    case 13:
        return change_head(reading, filled<ReadingHead>(random));
    case 14: {
        Path path = reading.path;
        path.legs[0].points = {
            on_straight_path(0.0), {on_straight_path(20.0).x, between(random, 100.0, 300.0)}, on_straight_path(40.0)};
        return often(random, 0.5) ? change_path(reading, path)
                                  : change_calibration(reading, "scan.tif", any_scale(random));
    }
    case 15: {
        const Finding* finding = any_of(reading.findings, random);
        return finding == nullptr ? nothing
                                  : settle_finding(reading, finding->id, static_cast<Finding::State>(below(random, 4)),
                                                   any_text(random), fresh)
                                        .value_or(nothing);
    }
    default:
        return edits_between(reading, random_reading(random), "Read the core anew");
    }
}

Edit any_edit(std::mt19937& random, int depth) {
    switch (below(random, depth < 4 ? 9 : 8)) {
    case 0:
        return any_of_object<Boundary>(random);
    case 1:
        return any_of_object<Candidate>(random);
    case 2:
        return any_of_object<Break>(random);
    case 3:
        return any_of_object<AbsentRing>(random);
    case 4:
        return any_of_object<Finding>(random);
    case 5:
        return {Changed<ReadingHead>{filled<ReadingHead>(random), filled<ReadingHead>(random)}};
    case 6:
        return {Changed<Path>{filled<Path>(random), filled<Path>(random)}};
    case 7:
        return {CalibrationChanged{any_text(random), perhaps(random, any_scale(random)),
                                   perhaps(random, any_scale(random))}};
    default: {
        EditGroup group{any_text(random), {}};
        for (int n = below(random, 4); n > 0; --n) {
            group.edits.push_back(any_edit(random, depth + 1));
        }
        return {std::move(group)};
    }
    }
}

} // namespace pithward::test
