// Writes the manual page and the shell completion of the program; the build runs it. Usage: pithward-manual PAGE
// COMPLETION
#include "app/manual/manual_page.h"

#include <cstdio>
#include <exception>
#include <fstream>

int main(int argc, char** argv) {
    try {
        if (argc != 3) {
            std::fprintf(stderr, "pithward-manual PAGE COMPLETION\n");
            return 2;
        }
        const pithward::batch::CommandLine line;
        std::ofstream page(argv[1]);
        page << pithward::manual::manual_page(line, PITHWARD_VERSION);
        std::ofstream completion(argv[2]);
        completion << pithward::manual::bash_completion(line);
        return page.flush() && completion.flush() ? 0 : 2;
    } catch (const std::exception& error) {
        std::fprintf(stderr, "pithward-manual: %s\n", error.what());
        return 2;
    }
}
