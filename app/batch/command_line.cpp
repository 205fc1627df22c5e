#include "app/batch/command_line.h"

namespace pithward::batch {

namespace {

void add_common(CLI::App& parser, CommonOptions& common) {
    parser.add_flag("--strict", common.strict, "Exit with 1 when findings need a person");
    parser.add_flag("--force", common.force, "Write over existing files");
    parser.add_flag("--quiet", common.quiet, "No progress and no log");
    parser.add_option("--threads", common.threads, "Threads to use; 0: one for each core")->check(CLI::Range(0, 256));
}

} // namespace

CommandLine::CommandLine() {
    parser.set_version_flag("--version", std::string("pithward ") + PITHWARD_VERSION);
    parser.add_option("FILE", files, "Scans, or a project, to open in the window");
    add_common(parser, common);
    for (const Command& command : commands()) {
        CLI::App* sub = parser.add_subcommand(command.name, command.summary);
        add_common(*sub, common);
        runs.emplace_back(sub, command.attach(*sub, common));
        refuse_empty_values(*sub);
    }
    refuse_empty_values(parser);
}

} // namespace pithward::batch
