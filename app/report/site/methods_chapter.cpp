#include "app/report/site/chapters.h"
#include "app/report/site/figures_in_words.h"

#include <algorithm>

namespace pithward::report {

namespace {

void add_measuring(std::vector<Block>& blocks) {
    blocks.push_back(Heading{2, "From the scan to the widths"});
    blocks.push_back(Paragraph{
        "Cores were measured on scans of their sanded surface. Along a path from bark to pith the program proposed "
        "ring "
        "boundaries, each with a confidence (a probability that it is an annual boundary), and findings: places that a "
        "person should look at. A boundary is where a year's growth ended. In conifers it is the steep fall from "
        "latewood "
        "to the next earlywood, in ring-porous wood the bark-side edge of the latewood, in diffuse-porous wood the "
        "bark-side edge of the terminal line; its place is half of the change of brightness."});
    blocks.push_back(Paragraph{
        "The width of a ring is the distance between its two boundaries square to them: L cos a / cos(d/2), L the "
        "length "
        "of the path between them less cracks, a the mean of the angles between path and normals, d their difference. "
        "Three things are kept apart: a width; 0, a ring that the tree did not lay here (locally absent); and a gap, a "
        "ring that could not be measured. A ring bears the calendar year in which its growth began, also south of the "
        "equator (common practice, after Schulman)."});
    blocks.push_back(Heading{2, "Uncertainty of a width"});
    blocks.push_back(Paragraph{"The standard deviation of a width is that of its two places, in quadrature and times "
                               "the cosine, with that of the "
                               "tilt: L sin a times 1 degree (assumed). A boundary that a person placed has the "
                               "deviation of a local refit, else "
                               "0.02 mm (assumed). The relative deviation of a scan's scale is common to all its "
                               "rings; it is told with the scan "
                               "and added only to sums. Intervals are of 90 %."});
    blocks.push_back(Heading{2, "Pith and age"});
    blocks.push_back(Paragraph{
        "Where the pith is not on the core, its distance follows from the curves of the innermost boundaries, and the "
        "rings "
        "to it from that distance and the widths near it, both with 90 % intervals. The year of the pith is the oldest "
        "ring's less the rings to the pith, at the height of the core. The year of establishment takes off the years "
        "that "
        "the tree took to grow up to that height, where these were given; it is not told otherwise."});
}

std::string trend_told(const dating::IndexOptions& options) {
    std::string text;
    switch (options.trend) {
    case dating::TrendKind::Mean:
        text = "the mean";
        break;
    case dating::TrendKind::Line:
        text = "a straight line";
        break;
    case dating::TrendKind::Exponential:
        text = "a falling exponential";
        break;
    case dating::TrendKind::Spline:
        text = "a smoothing spline with a response of one half at " + fixed(options.period, 0) + " years";
        break;
    }
    text += options.difference ? ", taken off" : ", by division";
    text += options.logarithm ? ", of logarithms" : "";
    return text + (options.prewhiten ? ", with what the years before foretell taken off (autoregression)"
                                     : ", without prewhitening");
}

void add_dating_method(std::vector<Block>& blocks, const SiteRecord& record) {
    blocks.push_back(Heading{2, "Dating and chronology"});
    blocks.push_back(Paragraph{
        "Years come from the date of coring and the state of the wood under the bark, or from a person, as the history "
        "of "
        "each core tells. They were checked by crossdating: each series against the mean of the others of its site and "
        "species, those of its own tree left out. For that, widths were detrended by " +
        trend_told(record.crossdating.index) +
        ". Told are Pearson's correlation r, t = r sqrt(n - 2) / sqrt(1 - r^2), and the share of changes in the same "
        "direction; segments are tried at shifts of \xE2\x88\x92"
        "10 to 10 years; a chain over all shifts looks for rings "
        "too many or too few, with the probability of each."});
    blocks.push_back(Paragraph{"The chronology is the biweight mean of indices detrended by " +
                               trend_told(record.chronology) +
                               ". Its intervals draw trees anew with replacement, 500 times from a fixed seed. EPS is "
                               "the expressed population "
                               "signal; 0.85 is the value that it is usually asked to reach (common practice)."});
}

void add_review_method(std::vector<Block>& blocks, const SiteRecord& record) {
    blocks.push_back(Heading{2, "Review"});
    blocks.push_back(Paragraph{"A reading is proposed by the program, marked when its analyst is done, and passed or "
                               "returned by another person. "
                               "It passes only without an open finding; an edit after that sets it back to marked. Of "
                               "each boundary it is kept "
                               "whether it was looked at, confirmed in bulk, or confirmed by nobody. Names are as "
                               "entered: they are no proof of "
                               "who it was."});
    if (record.people.empty()) {
        return;
    }
    Table table;
    table.caption = "People, as entered in the project.";
    table.columns = {{"name", 2.0}, {"role", 2.0}};
    for (const record::Person& person : record.people) {
        table.rows.push_back({person.name, or_dash(person.role)});
    }
    blocks.push_back(std::move(table));
}

std::string told_state(ScanRecord::State state) {
    switch (state) {
    case ScanRecord::State::Same:
        return "same bytes";
    case ScanRecord::State::Other:
        return "other bytes than measured";
    case ScanRecord::State::NotFound:
        return "not found";
    case ScanRecord::State::Unknown:
        break;
    }
    return "no checksum kept";
}

const Calibration* scale_of(const SiteRecord& record, const std::string& scan) {
    for (const CoreRecord& core : record.cores) {
        if (core.measured) {
            const auto scale = core.measured->reading.calibrations.find(scan);
            if (scale != core.measured->reading.calibrations.end()) {
                return &scale->second;
            }
        }
    }
    return nullptr;
}

Table scans_table(const SiteRecord& record) {
    Table table;
    table.caption = "The scans, with the SHA-256 checksum of the bytes that were measured and what was found in their "
                    "place when this report was made.";
    table.columns = {{"scan", 1.6},
                     {"bytes", 0.9, true},
                     {"px/mm in x, y", 1.2, true},
                     {"relative sd", 0.8, true},
                     {"scale by", 0.8},
                     {"SHA-256", 3.4},
                     {"now", 1.1}};
    for (const ScanRecord& scan : record.scans) {
        const Calibration* scale = scale_of(record, scan.entry.path);
        table.rows.push_back({scan.entry.path, std::to_string(scan.entry.bytes),
                              scale ? fixed(scale->px_per_mm_x, 3) + ", " + fixed(scale->px_per_mm_y, 3) : not_known,
                              scale ? fixed(scale->relative_sd, 4) : not_known, scale ? word(scale->source) : not_known,
                              or_dash(scan.entry.sha256), told_state(scan.state)});
    }
    return table;
}

void add_repeating(std::vector<Block>& blocks, const SiteRecord& record) {
    blocks.push_back(Heading{2, "To repeat the work"});
    std::string versions;
    for (const std::string& version : record.programs) {
        versions += (versions.empty() ? "" : ", ") + version;
    }
    blocks.push_back(Paragraph{
        "The work was done with Pithward " + or_dash(versions) +
        ". Each core's path and boundaries are in the project, "
        "with every edit, who made it and when. With the project, the scans of the table below and the same version, "
        "these commands give the same numbers on every machine; the years come from the project:"});
    blocks.push_back(Bullets{{
        "pithward measure PROJECT.pithward CORE: a new proposal for a core, to be held against the reading that stands",
        "pithward history PROJECT.pithward CORE: each edit that led from the proposal to that reading",
        "pithward export PROJECT.pithward --json FILE.json --csv FILE.csv --decadal FILE.rwl: everything of the "
        "readings, and the series",
        "pithward crossdate PROJECT.pithward: agreement and slips, of all series of the project together",
        "pithward report PROJECT.pithward --out FILE.pdf: this report",
    }});
    blocks.push_back(scans_table(record));
}

} // namespace

void add_methods(std::vector<Block>& blocks, const SiteRecord& record) {
    blocks.push_back(Heading{1, "Methods and settings"});
    add_measuring(blocks);
    add_dating_method(blocks, record);
    add_review_method(blocks, record);
    add_repeating(blocks, record);
}

} // namespace pithward::report
