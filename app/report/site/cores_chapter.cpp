#include "app/picture/dating/widths_sheet.h"
#include "app/report/sheet_file.h"
#include "app/report/site/chapters.h"
#include "app/report/site/figures_in_words.h"
#include "libcore/dating/dated_part.h"
#include "libcore/dating/year_series.h"
#include "libcore/measure/basal_area.h"
#include "libcore/measure/measure.h"
#include "libcore/specimen/width_series.h"

#include <algorithm>

namespace pithward::report {

namespace {

constexpr double plot_breadth = 620.0;
constexpr double plot_height = 400.0;

std::string told_of_pith(const Reading& reading) {
    if (!reading.pith) {
        return "not told";
    }
    const Pith& pith = *reading.pith;
    if (pith.inside) {
        return "on the core";
    }
    return fixed(pith.distance.value(), 1) + " mm (" + fixed(pith.distance_low.value(), 1) + " to " +
           fixed(pith.distance_high.value(), 1) + ") from the innermost boundary, rings to it " +
           std::to_string(pith.missing_rings) + " (" + std::to_string(pith.missing_low) + " to " +
           std::to_string(pith.missing_high) + "), by " +
           (pith.source == Pith::Source::Hand   ? "a person"
            : pith.source == Pith::Source::Seen ? "its look"
                                                : "the curves");
}

std::string told_of_workers(const CoreRecord& core) {
    std::string text;
    for (const Worker& worker : core.workers) {
        text += (text.empty() ? "" : "; ") + worker.who + ", " +
                counted(static_cast<std::size_t>(worker.edits), "entry", "entries") + ", " + worker.first.substr(0, 10);
        if (worker.first.substr(0, 10) != worker.last.substr(0, 10)) {
            text += " to " + worker.last.substr(0, 10);
        }
    }
    return or_dash(text);
}

std::string told_scale(const Reading& reading) {
    std::string text;
    for (const auto& [scan, scale] : reading.calibrations) {
        text += (text.empty() ? "" : "; ") + fixed(scale.px_per_mm_x, 3) + ", " + fixed(scale.px_per_mm_y, 3) +
                " px/mm by " + word(scale.source) + ", relative sd " + fixed(scale.relative_sd, 4);
    }
    return or_dash(text);
}

Table facts_table(const CoreRecord& core) {
    const Reading& reading = core.measured->reading;
    Table table;
    table.caption = core.name + ": the reading.";
    table.columns = {{"", 1.3}, {"", 5.0}};
    table.rows = {
        {"state", told_people(core.standing)},
        {"boundaries", told_counts(core.standing)},
        {"worked on by", told_of_workers(core)},
        {"wood", word(reading.wood) + "; outer wood " + word(reading.outer)},
        {"bark end", "by " + reading.bark_end.how + ", probability " + fixed(reading.bark_end.probability, 2)},
        {"scale", told_scale(reading)},
        {"pith", told_of_pith(reading)},
        {"year of the pith", core.age ? told(core.age->pith) : not_known},
    };
    if (!reading.breaks.empty()) {
        std::string breaks;
        for (const Break& one : reading.breaks) {
            breaks += (breaks.empty() ? "" : "; ") + word(one.kind);
            if (one.kind == Break::Kind::LostWood) {
                breaks += one.rings_lost ? ", " + counted(static_cast<std::size_t>(std::max(0, *one.rings_lost)),
                                                          "ring lost", "rings lost")
                                         : ", nobody knows how many rings";
            }
            breaks += one.note.empty() ? "" : " (" + one.note + ")";
        }
        table.rows.push_back({"breaks", breaks});
    }
    if (const auto& partial = core.measured->series.outer_partial) {
        table.rows.push_back({"unfinished outer ring", fixed(partial->value(), 3) + " mm, not in the series"});
    }
    if (!reading.note.empty()) {
        table.rows.push_back({"note", reading.note});
    }
    return table;
}

/// Where on the core a finding lies: the ring's year or number, at its nearest boundary.
std::string place_of_finding(const CoreRecord& core, const Finding& finding) {
    const Reading& reading = core.measured->reading;
    const RingSeries& series = core.measured->series;
    double nearest = 0.0;
    const PlacedBoundary* at = nullptr;
    for (std::size_t i = 0; i < reading.boundaries.size() && i < series.boundaries.size(); ++i) {
        const Boundary& boundary = reading.boundaries[i];
        if (boundary.leg != finding.leg) {
            continue;
        }
        const ImagePoint way = boundary.at - finding.at;
        const double squared = way.x * way.x + way.y * way.y;
        if (at == nullptr || squared < nearest) {
            nearest = squared;
            at = &series.boundaries[i];
        }
    }
    if (at == nullptr) {
        return not_known;
    }
    return at->year ? std::to_string(at->year->value()) : "ring " + std::to_string(at->ring_number);
}

Table findings_table(const CoreRecord& core) {
    Table table;
    table.caption = core.name +
                    ": findings. Place: the year of the ring that ends at the nearest boundary. Probability: that "
                    "the proposal is right. Verdict: of the second person.";
    table.columns = {{"no.", 0.5, true}, {"kind", 1.4},        {"place", 0.9}, {"what is doubtful", 3.4},
                     {"proposal", 3.0},  {"prob.", 0.7, true}, {"state", 1.0}, {"verdict", 1.0},
                     {"comment", 1.3}};
    int number = 0;
    for (const Finding& finding : core.measured->reading.findings) {
        table.rows.push_back({std::to_string(++number), word(finding.kind), place_of_finding(core, finding),
                              finding.reason, or_dash(finding.proposal), fixed(finding.probability, 2),
                              word(finding.state), word(finding.verdict), or_dash(finding.comment)});
    }
    return table;
}

/// Thousandths of a millimetre: 0 is an absent ring, a dash a gap.
std::string width_cell(const WidthSeries& series, int year) {
    const int index = year - series.first_year.value();
    if (index < 0 || index >= static_cast<int>(series.widths.size())) {
        return "";
    }
    const auto& width = series.widths[static_cast<std::size_t>(index)];
    return width ? fixed(width->value(), 3) : not_known;
}

Table widths_table(const CoreRecord& core, const WidthSeries& series) {
    Table table;
    table.caption = core.name + (series.dated ? ": ring widths in mm by calendar year."
                                              : ": ring widths in mm. The series is undated: 1 is its innermost ring.");
    table.columns.push_back({"from", 0.8});
    for (int k = 0; k < 10; ++k) {
        table.columns.push_back({"+" + std::to_string(k), 1.0, true});
    }
    const int first = series.first_year.value();
    const int last = series.last_year().value();
    for (int decade = first - ((first % 10) + 10) % 10; decade <= last; decade += 10) {
        std::vector<std::string> row{std::to_string(decade)};
        for (int k = 0; k < 10; ++k) {
            row.push_back(width_cell(series, decade + k));
        }
        table.rows.push_back(std::move(row));
    }
    std::vector<double> deviations;
    for (const Ring& ring : core.measured->series.rings) {
        if (ring.width && !ring.absent) {
            deviations.push_back(ring.sd.value());
        }
    }
    if (!deviations.empty()) {
        const auto middle = deviations.begin() + static_cast<std::ptrdiff_t>(deviations.size() / 2);
        std::ranges::nth_element(deviations, middle);
        table.note =
            "0.000: locally absent. \xE2\x80\x93: a gap, not measured. Standard deviation of a width: median " +
            fixed(*middle, 3) + " mm, greatest " + fixed(*std::ranges::max_element(deviations), 3) +
            " mm; each ring's own is in the JSON of pithward export.";
    }
    return table;
}

void add_core_pictures(std::vector<Block>& blocks, const CoreRecord& core) {
    const std::size_t findings = core.measured->reading.findings.size();
    for (std::size_t i = 0; i < core.pictures.size(); ++i) {
        const CorePicture& picture = core.pictures[i];
        if (picture.jpeg.empty()) {
            blocks.push_back(Paragraph{"No picture of " + core.name + ": " + picture.reason + ".", true});
            continue;
        }
        std::string caption = core.name + " on " + picture.scan + ", with its path and ring boundaries";
        caption += core.pictures.size() > 1 ? ", leg " + std::to_string(i + 1) + "." : ".";
        caption += " A whole line: sure, or confirmed by a person; dashed: likely; sparse: doubtful. A struck line: a "
                   "candidate turned down.";
        caption += findings > 0 ? " Numbers: the findings below." : "";
        blocks.push_back(Figure{std::move(caption), "The wood of core " + core.name + " with ring boundaries marked",
                                "image/jpeg", picture.jpeg});
    }
}

void add_series(std::vector<Block>& blocks, const CoreRecord& core) {
    const WidthSeries series = width_series(core.name, dating::dated_part(core.measured->series));
    if (series.widths.empty()) {
        return;
    }
    const dating::YearSeries widths = dating::widths_of(series);
    if (widths.size() > 1) {
        for (const std::string& picture : sheet_svgs(picture::widths_sheet(widths, plot_breadth), plot_height)) {
            blocks.push_back(Figure{core.name + ": ring widths. A circle on the line of 0: locally absent.",
                                    "Ring widths of core " + core.name + " over time", "image/svg+xml", picture});
        }
    }
    blocks.push_back(widths_table(core, series));
}

} // namespace

void add_cores(std::vector<Block>& blocks, const SiteRecord& record) {
    blocks.push_back(Heading{1, "The cores"});
    for (const CoreRecord& core : record.cores) {
        blocks.push_back(Heading{2, core.name});
        if (!core.measured) {
            blocks.push_back(Paragraph{core.not_measured + "."});
            continue;
        }
        add_core_pictures(blocks, core);
        blocks.push_back(facts_table(core));
        if (core.measured->reading.findings.empty()) {
            blocks.push_back(Paragraph{"The program and the people who looked at it noted no finding."});
        } else {
            blocks.push_back(findings_table(core));
        }
        add_series(blocks, core);
    }
}

} // namespace pithward::report
