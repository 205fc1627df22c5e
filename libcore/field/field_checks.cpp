#include "libcore/field/field_checks.h"

#include "libcore/field/depth.h"
#include "libcore/field/lean.h"
#include "libcore/field/outer.h"
#include "libcore/field/season.h"

#include <algorithm>

namespace pithward {

namespace {

/// What the checks say, as findings without numbers.
std::vector<Finding> checked(const Reading& reading, const RingSeries& series, const Site& site, const Tree& tree,
                             const Core& core) {
    std::vector<Finding> findings;
    for (const auto& remark :
         {field::lean_remark(tree, core, reading.wood), field::lost_wood_remark(core, reading),
          field::season_remark(site, tree, core, reading), field::depth_remark(tree, core, reading, series)}) {
        if (remark) {
            findings.push_back(field::finding_of(reading, *remark));
        }
    }
    return findings;
}

} // namespace

bool has_finding(const Reading& reading, const Finding& finding) {
    return std::ranges::any_of(reading.findings, [&](const Finding& known) {
        return known.kind == finding.kind && known.reason == finding.reason;
    });
}

Reading with_field_checks(Reading reading, const RingSeries& series, const Site& site, const Tree& tree,
                          const Core& core) {
    std::int64_t last = 0;
    for (const Finding& finding : reading.findings) {
        last = std::max(last, finding.id.value);
    }
    for (Finding& finding : checked(reading, series, site, tree, core)) {
        if (!has_finding(reading, finding)) {
            finding.id = FindingId{++last};
            reading.findings.push_back(std::move(finding));
        }
    }
    return reading;
}

Reading with_changed_field_facts(Reading reading, const RingSeries& series, const FieldFacts& before,
                                 const FieldFacts& after) {
    const auto told = [](const std::vector<Finding>& findings, const Finding& finding) {
        return std::ranges::any_of(
            findings, [&](const Finding& one) { return one.kind == finding.kind && one.reason == finding.reason; });
    };
    const std::vector<Finding> former = checked(reading, series, before.site, before.tree, before.core);
    const std::vector<Finding> now = checked(reading, series, after.site, after.tree, after.core);
    reading = with_field_checks(std::move(reading), series, after.site, after.tree, after.core);
    std::erase_if(reading.findings, [&](const Finding& finding) {
        return finding.state == Finding::State::Open && told(former, finding) && !told(now, finding);
    });
    return reading;
}

} // namespace pithward
