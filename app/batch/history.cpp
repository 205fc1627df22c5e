#include "app/batch/history.h"

#include "libcore/record/project.h"

#include <algorithm>
#include <cstdio>
#include <map>
#include <memory>

namespace pithward::batch {

namespace {

struct HistoryOptions {
    std::string project;
    std::string core;
};

Exit history(const HistoryOptions& options) {
    const auto project = record::Project::open(options.project, record::Project::Access::Read);
    if (!project) {
        return report(project.error());
    }
    const auto cores = project->cores();
    const auto lines = project->history();
    const auto people = project->people();
    if (!cores || !lines || !people) {
        return report(!cores ? cores.error() : (lines ? people.error() : lines.error()));
    }
    std::map<record::CoreId, std::string> names;
    bool known = options.core.empty();
    for (const record::CoreEntry& core : *cores) {
        names[core.id] = core.core.id;
        known = known || core.core.id == options.core;
    }
    if (!known) {
        return report({options.project, "there is no core " + options.core, "see pithward show"});
    }
    const auto with_role = [&](const std::string& name) {
        const auto person = std::ranges::find(*people, name, &record::Person::name);
        return person == people->end() || person->role.empty() ? name : name + ", " + person->role;
    };
    for (const record::HistoryEntry& line : *lines) {
        const std::string core = line.core ? names[*line.core] : "";
        if (options.core.empty() || core == options.core) {
            // A stranger's project may hold anything.
            std::printf("%s  %-24s %-16s %s%s\n", in_one_line(line.at).c_str(),
                        in_one_line(with_role(line.who)).c_str(), in_one_line(core).c_str(),
                        in_one_line(line.label).c_str(),
                        line.reading ? (" (reading " + std::to_string(line.reading->value) + ")").c_str() : "");
        }
    }
    return Exit::Done;
}

} // namespace

std::function<Exit()> attach_history(CLI::App& parser, const CommonOptions& /*common*/) {
    const auto options = std::make_shared<HistoryOptions>();
    parser.add_option("PROJECT", options->project, "Project to look at")->required();
    parser.add_option("CORE", options->core, "Only what was done to this core");
    return [options] { return history(*options); };
}

} // namespace pithward::batch
