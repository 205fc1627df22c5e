#include "app/batch/command_line.h"
#include "app/bench/window/window_program.h"

#include <spdlog/sinks/stdout_color_sinks.h>
#include <spdlog/spdlog.h>

#include <clocale>
#include <exception>

namespace {

using namespace pithward;

int run(int argc, char** argv) {
    spdlog::set_default_logger(spdlog::stderr_color_mt("pithward"));
    spdlog::set_pattern("%v");
    batch::CommandLine program;
    try {
        program.parser.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        if (error.get_exit_code() == 0) {
            return program.parser.exit(error); // --help and --version
        }
        return static_cast<int>(batch::report(Fault{"", error.what(), "see pithward --help"}));
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
