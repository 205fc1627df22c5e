// Brings a project to a made-up next version, which takes a while, and is killed meanwhile.
#include "libcore/record/schema.h"
#include "tests/record/slow_version.h"

int main(int argc, char** argv) {
    using namespace pithward::record;
    if (argc != 2) {
        return 2;
    }
    const auto connection = Connection::open(argv[1], Connection::Mode::Write);
    std::vector<MigrationStep> steps(migration_steps().begin(), migration_steps().end());
    steps.emplace_back(pithward::test::slow_version);
    return connection && migrate(**connection, steps) ? 0 : 1;
}
