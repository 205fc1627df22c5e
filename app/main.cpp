#include "app/batch/command.h"
#include "app/bench/window/window_program.h"

#include <CLI/CLI.hpp>
#include <spdlog/sinks/stdout_color_sinks.h>
#include <spdlog/spdlog.h>

#include <clocale>
#include <exception>
#include <string>
#include <vector>

namespace {

using namespace pithward;

/// A parser for the whole command line, and what each command runs.
struct Program {
    CLI::App parser{"Ring-width series from scanned increment cores.", "pithward"};
    batch::CommonOptions common;
    std::vector<std::pair<CLI::App*, std::function<batch::Exit()>>> runs;
    std::vector<CLI::App*> to_come;
    std::vector<std::string> files;
};

void add_common(CLI::App& parser, batch::CommonOptions& common) {
    parser.add_flag("--strict", common.strict, "Exit with 1 when findings need a person");
    parser.add_flag("--force", common.force, "Write over existing files");
    parser.add_flag("--quiet", common.quiet, "No progress and no log");
    parser.add_option("--threads", common.threads, "Threads to use; 0: one for each core")->check(CLI::Range(0, 256));
}

void build(Program& program) {
    program.parser.set_version_flag("--version", std::string("pithward ") + PITHWARD_VERSION);
    program.parser.add_option("FILE", program.files, "Scans, or a project, to open in the window");
    add_common(program.parser, program.common);
    for (const batch::Command& command : batch::commands()) {
        CLI::App* sub = program.parser.add_subcommand(command.name, command.summary);
        add_common(*sub, program.common);
        program.runs.emplace_back(sub, command.attach(*sub, program.common));
        batch::refuse_empty_values(*sub);
    }
    for (const char* verb : batch::verbs_to_come()) {
        CLI::App* sub = program.parser.add_subcommand(verb, "")->group(""); // not in the help
        sub->allow_extras();
        program.to_come.push_back(sub);
    }
    batch::refuse_empty_values(program.parser);
}

int run(int argc, char** argv) {
    spdlog::set_default_logger(spdlog::stderr_color_mt("pithward"));
    spdlog::set_pattern("%v");
    Program program;
    build(program);
    try {
        program.parser.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        if (error.get_exit_code() == 0) {
            return program.parser.exit(error); // --help and --version
        }
        return static_cast<int>(batch::report(Fault{"", error.what(), "see pithward --help"}));
    }
    for (const CLI::App* verb : program.to_come) {
        if (verb->parsed()) {
            return static_cast<int>(batch::report(
                Fault{verb->get_name(), "this command is not in this version yet", "see pithward --help"}));
        }
    }
    if (program.common.quiet) {
        spdlog::set_level(spdlog::level::err);
    }
    for (const auto& [parser, command] : program.runs) {
        if (parser->parsed()) {
            return static_cast<int>(command());
        }
    }
    return bench::run_window(argc, argv, program.files);
}

} // namespace

int main(int argc, char** argv) {
    try {
        return run(argc, argv);
    } catch (const std::exception& error) {
        std::fprintf(stderr, "pithward: %s; please report this\n", error.what());
        return 2;
    }
}
