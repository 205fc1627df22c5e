#include "libcore/field/field_checks.h"

#include "libcore/field/depth.h"
#include "libcore/field/lean.h"
#include "libcore/field/outer.h"
#include "libcore/field/season.h"

#include <algorithm>

namespace pithward {

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
    for (const auto& remark :
         {field::lean_remark(tree, core, reading.wood), field::lost_wood_remark(core, reading),
          field::season_remark(site, tree, core, reading), field::depth_remark(tree, core, reading, series)}) {
        if (!remark) {
            continue;
        }
        Finding finding = field::finding_of(reading, *remark);
        if (!has_finding(reading, finding)) {
            finding.id = FindingId{++last};
            reading.findings.push_back(std::move(finding));
        }
    }
    return reading;
}

} // namespace pithward
