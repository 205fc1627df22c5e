#include "app/batch/tree_ages.h"

#include "libcore/record/tree_ages.h"

#include <map>
#include <utility>

namespace pithward::batch {

Outcome<int> compare_tree_ages(record::Project& project, const EditStamp& stamp) {
    const auto cores = project.cores();
    if (!cores) {
        return tl::unexpected(cores.error());
    }
    std::map<std::pair<std::string, std::string>, std::vector<record::CoreEntry>> trees;
    for (const record::CoreEntry& core : *cores) {
        trees[{core.site.id, core.tree.id}].push_back(core);
    }
    int findings = 0;
    for (const auto& [tree, of_tree] : trees) {
        const auto noted = record::compare_tree_ages(project, of_tree, record::AgeFindings::FollowAdd, stamp);
        if (!noted) {
            return tl::unexpected(noted.error());
        }
        findings += *noted;
    }
    return findings;
}

} // namespace pithward::batch
