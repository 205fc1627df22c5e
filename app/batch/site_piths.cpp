#include "app/batch/site_piths.h"

#include "app/batch/each_accepted.h"
#include "libcore/edit/edits_between.h"
#include "libcore/measure/measure.h"
#include "libcore/pith/inner_widths.h"
#include "libcore/pith/judge_pith.h"
#include "libcore/pith/published.h"
#include "libcore/pith/site_growth.h"

#include <algorithm>
#include <utility>

namespace pithward::batch {

namespace {

using record::CoreEntry;

/// The inner widths that a core's accepted reading gives.
struct KnownWidths {
    record::CoreId core;
    std::string site;
    std::vector<double> widths_mm;
};

Outcome<std::vector<KnownWidths>> known_widths(const record::Project& project, const std::vector<CoreEntry>& cores) {
    std::vector<KnownWidths> known;
    const auto see = [&](const CoreEntry& core, const Reading& reading, const RingSeries& series) {
        known.push_back({core.id, core.site.id, pith::inner_widths(reading, series)});
    };
    return each_accepted(project, cores, see).map([&] { return std::move(known); });
}

Outcome<void> judge_again(record::Project& project, ReadingId id, const PithKnowledge& knowledge,
                          const EditStamp& stamp) {
    const auto document = project.document(id);
    if (!document) {
        return tl::unexpected(document.error());
    }
    const Reading& reading = document->reading();
    if (reading.pith && reading.pith->source == Pith::Source::Hand) {
        return {};
    }
    const auto series = measure(reading);
    if (!series) {
        return {}; // what can't be measured has no pith to judge
    }
    const Reading after = with_judgement(reading, judge_pith(reading, *series, knowledge), document->fresh_id());
    const Edit edit = edits_between(reading, after, "Judge the pith by the growth of the site's other cores too");
    return project.edit(id, edit, stamp).map([](const auto& /*record*/) {});
}

} // namespace

PithKnowledge knowledge_of(const Tree& tree) {
    PithKnowledge knowledge;
    if (tree.dbh_cm && tree.bark_mm) {
        knowledge.stem_radius = Millimetres(pith::stem_radius(*tree.dbh_cm, *tree.bark_mm));
    }
    return knowledge;
}

Outcome<void> judge_piths_by_site(record::Project& project, const EditStamp& stamp) {
    const auto cores = project.cores();
    const auto readings = project.readings();
    if (!cores || !readings) {
        return tl::unexpected(cores ? readings.error() : cores.error());
    }
    const auto known = known_widths(project, *cores);
    if (!known) {
        return tl::unexpected(known.error());
    }
    for (const record::ReadingEntry& one : *readings) {
        if (!one.unconfirmed()) {
            continue;
        }
        const auto core = std::ranges::find(*cores, one.core, &CoreEntry::id);
        std::vector<std::vector<double>> others;
        others.reserve(known->size());
        for (const KnownWidths& other : *known) {
            if (core != cores->end() && other.core != one.core && other.site == core->site.id) {
                others.push_back(other.widths_mm);
            }
        }
        if (others.size() < pith::least_site_cores) {
            continue;
        }
        PithKnowledge knowledge = knowledge_of(core->tree);
        knowledge.growth = pith::growth_of_site(others);
        if (auto judged = judge_again(project, one.id, knowledge, stamp); !judged) {
            return judged;
        }
    }
    return {};
}

} // namespace pithward::batch
