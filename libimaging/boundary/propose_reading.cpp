#include "libimaging/boundary/propose_reading.h"

#include "libcore/specimen/path_check.h"
#include "libimaging/boundary/breaks.h"
#include "libimaging/boundary/candidate_of.h"
#include "libimaging/boundary/chosen.h"
#include "libimaging/boundary/direction.h"
#include "libimaging/boundary/findings.h"
#include "libimaging/boundary/flat_strip.h"
#include "libimaging/boundary/inner_end.h"
#include "libimaging/boundary/no_rings.h"
#include "libimaging/boundary/outer_end.h"
#include "libimaging/boundary/pale_gaps.h"
#include "libimaging/boundary/sequence.h"
#include "libimaging/boundary/why_no_wood.h"
#include "libimaging/boundary/wood/judge_wood.h"
#include "libimaging/boundary/wood/wood_model.h"
#include "libimaging/scan/beside.h"
#include "libimaging/strip/lanes.h"
#include "libimaging/strip/strip_geometry.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pithward {

using namespace boundary;

namespace {

constexpr double worth_telling = 0.05; ///< Candidates of less probability are not told.
constexpr double black = 0.05;         ///< Mean brightness of a path that runs beside the wood.

std::string why_not(const Mark& mark) {
    if (mark.signs.support < 0.6) {
        return "it does not cross the core";
    }
    if (mark.signs.relative_edge > 1.6) {
        return "soft on both sides";
    }
    if (mark.signs.recovery < 0.3) {
        return "the wood does not get lighter again inward";
    }
    return "much weaker than its neighbours";
}

void add_boundaries(Reading& reading, const Chosen& chosen, const FlatStrip& strip, const StripGeometry& geometry) {
    auto next = chosen.sequence.chosen.begin();
    for (std::size_t k = 0; k < chosen.marks.size(); ++k) {
        const double probability = chosen.sequence.probability[k];
        Candidate candidate = candidate_of(chosen.marks[k], probability, strip, geometry);
        if (next != chosen.sequence.chosen.end() && *next == k) {
            const auto id = static_cast<std::int64_t>(reading.boundaries.size()) + 1;
            reading.boundaries.push_back(boundary_from(candidate, BoundaryId{id}));
            ++next;
        } else if (probability >= worth_telling) {
            candidate.id = CandidateId{static_cast<std::int64_t>(reading.not_annual.size()) + 1};
            candidate.reason = why_not(chosen.marks[k]);
            reading.not_annual.push_back(std::move(candidate));
        }
    }
}

/// The ring that a column lies in, counted from the bark; the number of boundaries where it lies in none.
std::size_t ring_at(const Chosen& chosen, double column) {
    const std::vector<std::size_t>& taken = chosen.sequence.chosen;
    const auto inward = std::ranges::find_if(taken, [&](std::size_t k) { return chosen.marks[k].column > column; });
    return inward == taken.begin() ? taken.size() : static_cast<std::size_t>(inward - taken.begin()) - 1;
}

/// A break has wood on both sides: what has no boundary inward of it is the end of the core, not a break. Answers with
/// the rings, and those that are broken.
ProposedRings add_breaks(Reading& reading, const Chosen& chosen, const std::vector<Gap>& gaps, const FlatStrip& strip,
                         const StripGeometry& geometry) {
    const std::vector<std::size_t>& taken = chosen.sequence.chosen;
    ProposedRings rings;
    for (std::size_t i = 0; i + 1 < taken.size(); ++i) {
        rings.width_mm.push_back(chosen.s_mm[taken[i + 1]] - chosen.s_mm[taken[i]]);
    }
    const double innermost = taken.empty() ? 0.0 : chosen.marks[taken.back()].column;
    for (const Gap& gap : gaps) {
        if (gap.from > innermost) {
            continue;
        }
        rings.broken.push_back(ring_at(chosen, gap.from));
        Break stretch;
        stretch.id = BreakId{static_cast<std::int64_t>(reading.breaks.size()) + 1};
        stretch.from = geometry.image_point({strip.s(gap.from), 0.0});
        stretch.to = geometry.image_point({strip.s(gap.to), 0.0});
        reading.breaks.push_back(stretch);
    }
    return rings;
}

/// Lanes up to a little beyond the core's edges, which a path need not follow exactly.
LanesOptions lanes_for(const ReadingRequest& request, KeptPieces* kept) {
    constexpr double beside_mm = 0.5;
    LanesOptions options;
    options.kept = kept;
    if (request.breadth_mm > 0.0) {
        options.half_breadth_mm = std::min(options.half_breadth_mm, 0.5 * request.breadth_mm + beside_mm);
    }
    return options;
}

double mean_brightness(const Lanes& lanes) {
    double sum = 0.0;
    for (const cv::Mat1f& channel : lanes.rgb) {
        sum += cv::mean(channel.rowRange(lanes.centre() - 1, lanes.centre() + 2))[0] / 3.0;
    }
    return sum;
}

WoodJudgement wood_of(const ReadingRequest& request, const Lanes& lanes) {
    if (request.wood) {
        return {*request.wood, 1.0, "given"};
    }
    return request.judged ? *request.judged : judge_wood(lanes);
}

Fault no_wood(const std::string& scan, const std::string& what) {
    return {scan, what, "draw the path along the middle of the core, from the bark toward the pith"};
}

} // namespace

std::optional<Fault> ReadingRequest::validate(const Scan& scan) const {
    return fault_of_path(path, scan, calibration);
}

Outcome<Reading> propose_reading(const ScanFile& scan, const ReadingRequest& request, const Work& work,
                                 KeptPieces* kept) {
    if (auto fault = request.validate(scan.header())) {
        return tl::unexpected(*fault);
    }
    const StripGeometry geometry(request.path, request.calibration);
    const Work straightening{work.stop, [&](double done) { work.report(0.6 * done); }};
    const auto lanes =
        lanes_along(scan, geometry, request.calibration.px_per_mm(), lanes_for(request, kept), straightening);
    if (!lanes) {
        return tl::unexpected(lanes.error());
    }
    if (mean_brightness(*lanes) < black) {
        return tl::unexpected(no_wood(scan.header().file, "there is no wood under the path"));
    }
    const Work flattening{work.stop, [&](double done) { work.report(0.6 + 0.3 * done); }};
    const WoodJudgement wood = wood_of(request, *lanes);
    const WoodModel& model = wood_model(wood.type);
    Relief relief = relief_of(*lanes);
    if (model.cut_outdoes_rings) {
        relief = ending_with_wood(std::move(relief), *lanes, geometry.length_mm());
    }
    const FlatStrip strip = flat_strip(*lanes, relief, model.signal(relief, *lanes), geometry.length_mm(), flattening);
    auto signs = beside([&] { return wood_signs(*lanes, relief, strip); });
    auto looks = beside([&] { return coarse_looks(*lanes, strip); });
    const std::vector<Mark> marks = model.marks(strip);
    if (const auto why = why_no_wood(signs.get(), model.type, geometry.length_mm())) {
        return tl::unexpected(no_wood(scan.header().file, "no wood with rings across the path was found: " + *why));
    }
    const OuterEnd outer = outer_end(*lanes, strip, marks, model);
    const double first = outer.edge_seen ? outer.column : strip.column(0.0);
    const double last = strip.column(strip.path_mm);
    const std::vector<Gap> gaps = together(gaps_on_path(strip, first, last), pale_gaps(looks.get(), first, last));

    Reading reading;
    reading.wood = model.type;
    reading.outer = request.outer == OuterWood::Unknown ? outer.judged : request.outer;
    reading.last_year = request.last_year;
    reading.path.legs = {Leg{request.scan_name, request.path, {}}};
    reading.calibrations[request.scan_name] = request.calibration;
    reading.bark_end = request.bark_end;
    if (outer.edge_seen) {
        reading.wood_edge = geometry.image_point({strip.s(outer.column), 0.0});
    }
    if (reading.bark_end.how == "given" && model.type == WoodType::Conifer) {
        if (const double forward = polarity_log_odds(strip); forward < -3.0) {
            reading.bark_end.probability = 1.0 / (1.0 + std::exp(-forward));
        }
    }
    Chosen chosen = choose(strip, marks, outer, gaps, request.outer, model.sequence);
    measure_latewood(model, strip, chosen);
    const ProposedRings rings = add_breaks(reading, chosen, gaps, strip, geometry);
    add_boundaries(reading, chosen, strip, geometry);
    add_flags(reading, rings.width_mm);
    if (has_no_rings(reading.boundaries, geometry.length_mm())) {
        return tl::unexpected(no_wood(scan.header().file, "no wood with ring boundaries was found under the path"));
    }
    add_findings(reading, rings, outer, request.outer != OuterWood::Unknown, wood);
    if (request.pith) {
        add_seen_pith(reading, *request.pith);
    }
    work.report(1.0);
    return reading;
}

} // namespace pithward
