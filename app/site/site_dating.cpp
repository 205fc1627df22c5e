#include "app/site/site_dating.h"

#include "libcore/dating/dated_part.h"
#include "libcore/dating/slips/slip_finding.h"

#include <algorithm>
#include <tuple>

namespace pithward::bench {

namespace {

WidthSeries widths_of_core(const SiteCore& core) {
    return width_series(core.name, dating::dated_part(core.series));
}

/// Among lines, what comes first: open slips by their probability, a series that is dated wrong as a whole, what can't
/// be compared, series without years, the rest by how little they agree.
std::tuple<int, double> urgency(const SiteDating& dating, const SiteLine& line) {
    const dating::DatedResult* series = dating.dated(line);
    if (series == nullptr) {
        return {3, 0.0};
    }
    double probability = 0.0;
    for (std::size_t i = 0; i < series->slips.size(); ++i) {
        if (!dating.settled(line, i)) {
            probability = std::max(probability, series->slips[i].probability);
        }
    }
    if (probability > 0.0) {
        return {0, -probability};
    }
    if (series->whole_shift != 0) {
        return {1, series->agreement.r.value_or(0.0)};
    }
    return series->agreement.r ? std::tuple(4, *series->agreement.r) : std::tuple(2, 0.0);
}

} // namespace

const dating::DatedResult* SiteDating::dated(const SiteLine& line) const {
    return line.dated ? &result.dated[line.place] : nullptr;
}

const dating::UndatedResult* SiteDating::undated(const SiteLine& line) const {
    return line.dated ? nullptr : &result.undated[line.place];
}

const Finding* SiteDating::noted(const SiteLine& line, std::size_t slip) const {
    if (slip >= line.noted.size() || !line.noted[slip]) {
        return nullptr;
    }
    const auto& findings = core(line).reading.findings;
    const auto found = std::ranges::find(findings, *line.noted[slip], &Finding::id);
    return found == findings.end() ? nullptr : &*found;
}

bool SiteDating::settled(const SiteLine& line, std::size_t slip) const {
    const Finding* finding = noted(line, slip);
    return finding != nullptr && finding->state != Finding::State::Open;
}

std::size_t dated_series(const SiteCores& cores) {
    return static_cast<std::size_t>(std::ranges::count_if(cores.cores, [](const auto& core) {
        const WidthSeries widths = widths_of_core(*core);
        return widths.dated && dating::widths_of(widths).size() > 0;
    }));
}

SiteDating date_site(SiteCores cores, const Work& work) {
    SiteDating dating;
    dating.cores = std::move(cores);
    dating::CrossdateInput input;
    for (std::size_t i = 0; i < dating.cores.cores.size(); ++i) {
        const SiteCore& core = *dating.cores.cores[i];
        const WidthSeries widths = widths_of_core(core);
        dating::TreeSeries series{core.name, core.tree, dating::widths_of(widths)};
        if (series.widths.size() == 0) {
            continue;
        }
        auto& list = widths.dated ? input.dated : input.undated;
        dating.lines.push_back({i, widths.dated, list.size(), {}});
        list.push_back(std::move(series));
        if (widths.dated) {
            input.wood.push_back(core.wood);
        }
    }
    dating.result = dating::crossdate(input, {}, work);
    if (work.stopped()) {
        return dating;
    }
    // As `pithward chronology` does: what trees have in common over decades stays in.
    const dating::IndexOptions options{.trend = dating::TrendKind::Exponential, .prewhiten = false};
    dating.chronology = dating::chronology(input.dated, options, work);
    for (SiteLine& line : dating.lines) {
        if (const dating::DatedResult* series = dating.dated(line)) {
            const SiteCore& core = dating.core(line);
            line.noted =
                dating::findings_of_slips(series->slips, series->whole_shift, core.wood, core.reading.findings);
        }
    }
    std::ranges::stable_sort(
        dating.lines, [&](const SiteLine& a, const SiteLine& b) { return urgency(dating, a) < urgency(dating, b); });
    return dating;
}

} // namespace pithward::bench
