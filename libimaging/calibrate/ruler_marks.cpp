#include "libimaging/calibrate/ruler_marks.h"

#include "libimaging/calibrate/mark_fit.h"
#include "libimaging/calibrate/mark_lattice.h"

#include <algorithm>
#include <cmath>

namespace pithward::calibrate {

namespace {

constexpr double first_look = 0.003; ///< Of the line's length: half breadth of the profile that steps are sought in.
constexpr double least_look_px = 2.0;
constexpr double greatest_look_px = 30.0;
constexpr double lane_reach = 0.5; ///< Of a period, on both sides of the line.
constexpr int most_lanes = 15;
constexpr double lane_share = 0.6;        ///< Of the marks that a lane must show.
constexpr double least_score = 0.45;      ///< With many marks ...
constexpr double score_per_mark = 2.0;    ///< ... and more by this over their number.
constexpr double least_contrast = 0.03;   ///< Of full brightness.
constexpr double greatest_scatter = 0.05; ///< Of a period.
constexpr double many_marks = 30.0;       ///< Fewer than so many must stand better than that.
constexpr double wandering = 0.7;         ///< Share of it that is not allowed where all neighbours are off alike.
constexpr double greatest_slant = 0.2;

Fault no_marks(const ScanFile& scan, std::string what) {
    return {scan.header().file, std::move(what),
            "draw the line along the ruler's marks, across ten of them or more, or give two points and their distance"};
}

/// The lattice, from the first place on the profile to the last.
Lattice through(const Lattice& lattice, std::size_t samples) {
    Lattice all = lattice;
    all.first -= std::floor(lattice.first / lattice.period) * lattice.period;
    all.count = static_cast<int>((static_cast<double>(samples) - 1.0 - all.first) / all.period) + 1;
    return all;
}

struct Fitted {
    Lattice lattice;
    MarkShape shape;
    RobustLine line;
    std::vector<LocatedMark> marks;
};

/// The marks of a profile near the places of a lattice, and the lattice through them.
std::optional<Fitted> fitted(const std::vector<double>& profile, Lattice lattice) {
    constexpr int rounds = 3;
    std::optional<Fitted> result;
    for (int round = 0; round < rounds; ++round) {
        MarkShape shape(profile, lattice);
        std::vector<LocatedMark> marks = locate_marks(profile, lattice, shape);
        const auto line = line_through(marks, lattice);
        if (!line || line->good < least_marks || line->slope < least_period) {
            return std::nullopt;
        }
        lattice.first = line->offset;
        lattice.period = line->slope;
        result = Fitted{lattice, std::move(shape), *line, std::move(marks)};
    }
    return result;
}

struct Slant {
    double value = 0.0;
    double sd = 0.0;
    cv::Range rows; ///< In which the marks show.
};

/// How the marks lean, from their places lane by lane; and the rows beside the line that show most of them.
std::optional<Slant> slant_of(const Band& band, const Fitted& on_line, double known) {
    const int rows = band.grey.rows;
    const int breadth = std::max(1, (rows + most_lanes - 1) / most_lanes);
    std::vector<LinePoint> points; // a lane's distance from the line, and the mean of what its marks are off by
    Slant slant{0.0, 0.0, cv::Range(rows, 0)};
    const auto expected = static_cast<double>(on_line.marks.size());
    for (int from = 0; from < rows; from += breadth) {
        const cv::Range lane(from, std::min(rows, from + breadth));
        const double across = band.across(lane.start) + 0.5 * (lane.size() - 1) * band.step;
        Lattice moved = on_line.lattice;
        moved.first += known * across / band.step;
        const auto marks = locate_marks(mean_profile(band, lane, 0.0), moved, on_line.shape);
        const auto line = line_through(marks, moved);
        if (!line || line->good < lane_share * expected) {
            continue;
        }
        const double middle = 0.5 * (on_line.lattice.count - 1);
        points.push_back({across, line->at(middle) * band.step - on_line.lattice.place(0) * band.step -
                                      middle * on_line.lattice.period * band.step});
        slant.rows = cv::Range(std::min(slant.rows.start, lane.start), std::max(slant.rows.end, lane.end));
    }
    const auto line = fit_line(points, 0.0, known, 0.002);
    if (!line) {
        return std::nullopt;
    }
    slant.value = line->slope;
    slant.sd = line->slope_sd;
    return slant;
}

RulerMarks marks_from(const RulerLine& line, const Fitted& fit, const std::optional<Slant>& slant, double step) {
    const MarkShape::Stroke stroke = fit.shape.stroke(fit.lattice.period);
    RulerMarks marks;
    marks.line = line;
    // Counted from the first mark seen, so that lengths are judged from there on.
    const int first = fit.marks.front().index;
    marks.rows.first = (fit.lattice.place(first) + stroke.middle) * step;
    marks.rows.period = fit.lattice.period * step;
    marks.rows.count = fit.marks.back().index - first + 1;
    marks.rows.slant = slant ? slant->value : 0.0;
    marks.rows.breadth = stroke.breadth * step;
    marks.rows.dark = stroke.dark;
    marks.period_sd = fit.line.slope_sd * step;
    marks.slant_sd = slant ? slant->sd : 0.0;
    marks.good = fit.line.good;
    marks.scatter = fit.line.scatter * step;
    return marks;
}

/// The greatest scatter of a ruler's marks, of a period. A few of anything stand at nearly equal steps somewhere; and
/// where neighbours are off alike, steps of nearly equal size were added up, which a ruler's maker does not do.
double allowed_scatter(const RobustLine& line) {
    return greatest_scatter * std::min(1.0, line.good / many_marks) * (1.0 - wandering * line.agreement);
}

std::optional<Fault> doubt(const ScanFile& scan, const Fitted& fit) {
    if (fit.shape.contrast() < least_contrast) {
        return no_marks(scan, "what repeats itself along the ruler line is too faint for a ruler's marks");
    }
    if (fit.line.scatter > allowed_scatter(fit.line) * fit.lattice.period) {
        return no_marks(scan, "what the ruler line crosses does not stand at equal steps");
    }
    const int seen = fit.marks.back().index - fit.marks.front().index + 1;
    if (fit.line.good < lane_share * seen) {
        return no_marks(scan, "too many marks are missing along the ruler line");
    }
    return std::nullopt;
}

/// Measures the marks near the places of a lattice (in pixels from the line's start).
Outcome<RulerMarks> measured(const ScanFile& scan, const RulerLine& line, const Lattice& lattice) {
    const auto band = sample_band(scan, line, lane_reach * lattice.period);
    if (!band) {
        return tl::unexpected(band.error());
    }
    const int look = std::max(1, static_cast<int>(0.15 * lattice.period));
    cv::Range rows(std::max(0, band->middle - look), std::min(band->grey.rows, band->middle + look + 1));
    std::vector<double> profile = mean_profile(*band, rows, 0.0);
    auto fit = fitted(profile, through(lattice, profile.size()));
    if (!fit) {
        return tl::unexpected(no_marks(scan, "no equal steps of a ruler's marks are found along the ruler line"));
    }
    std::optional<Slant> slant;
    for (int round = 0; round < 2; ++round) {
        slant = slant_of(*band, *fit, slant ? slant->value : 0.0);
        if (!slant || std::abs(slant->value) > greatest_slant) {
            return tl::unexpected(no_marks(scan, "the marks along the ruler line do not stand across it"));
        }
        profile = mean_profile(*band, slant->rows, slant->value);
        fit = fitted(profile, fit->lattice);
        if (!fit) {
            return tl::unexpected(no_marks(scan, "no equal steps of a ruler's marks are found along the ruler line"));
        }
    }
    if (const auto fault = doubt(scan, *fit)) {
        return tl::unexpected(*fault);
    }
    return marks_from(line, *fit, slant, band->step);
}

} // namespace

Outcome<RulerMarks> measure_marks(const ScanFile& scan, const RulerLine& line) {
    const double look = std::clamp(first_look * line.length_px(), least_look_px, greatest_look_px);
    const auto band = sample_band(scan, line, look);
    if (!band) {
        return tl::unexpected(band.error());
    }
    const auto lattice = find_lattice(mean_profile(*band, cv::Range(0, band->grey.rows), 0.0));
    if (!lattice || lattice->score < least_score + score_per_mark / lattice->count) {
        return tl::unexpected(no_marks(scan, "no equal steps of a ruler's marks are found along the ruler line"));
    }
    auto marks = measured(scan, line, *lattice);
    if (!marks) {
        return marks;
    }
    const auto lengths = band_of_lengths(scan, *marks);
    if (!lengths) {
        return tl::unexpected(lengths.error());
    }
    const auto beside = finer_marks_beside(*lengths, marks->rows);
    if (!beside || 0.5 * marks->rows.period < least_period) {
        return marks;
    }
    const RulerLine moved{line.from + line.across() * *beside, line.to + line.across() * *beside};
    Lattice finer = *lattice;
    finer.period = 0.5 * marks->rows.period;
    finer.first = marks->rows.first + marks->rows.slant * *beside;
    auto finer_marks = moved.validate(scan.header()) ? measured(scan, moved, finer) : marks;
    return finer_marks ? finer_marks : marks;
}

Outcome<Band> band_of_lengths(const ScanFile& scan, const RulerMarks& marks) {
    constexpr double periods = 8.0;
    const int reduction = std::max(1, static_cast<int>(marks.rows.period / 16.0));
    return sample_band(scan, marks.line, periods * marks.rows.period, reduction);
}

} // namespace pithward::calibrate
