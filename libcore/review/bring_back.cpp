#include "libcore/review/bring_back.h"

#include "libcore/edit/edits_between.h"
#include "libcore/edit/object_lists.h"

#include <utility>

namespace pithward::review {

Edit bring_back(const Reading& now, Reading then, std::string label) {
    then.state = now.state;
    then.analyst = now.analyst;
    for (Finding& finding : then.findings) {
        const auto here = find_object(now.findings, finding.id);
        const bool same = here != now.findings.end() && *here == finding;
        finding.verdict = same ? finding.verdict : Verdict::None;
    }
    return edits_between(now, then, std::move(label));
}

} // namespace pithward::review
