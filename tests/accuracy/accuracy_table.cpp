// accuracy_table FOLDER [--json FILE]: reads every core of a folder that `pithward-scan-maker graded` has rendered, and
// prints how right the readings are, for each kind and strength. docs/accuracy.md tells how to run it.

#include "libcore/formats/whole_file.h"
#include "tests/accuracy/figure_table.h"
#include "tests/accuracy/read_cases.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <cstdio>

namespace {

using namespace pithward;
using namespace pithward::accuracy;

int report(const Fault& fault) {
    std::fprintf(stderr, "%s\n", fault.line().c_str());
    return 2;
}

} // namespace

int main(int argc, char** argv) {
    CLI::App app("How right the program is on rendered cores");
    std::string folder;
    std::string json_file;
    app.add_option("FOLDER", folder, "Scans, truth and cases.json")->required();
    app.add_option("--json", json_file, "The figures, and each core with its mistakes; written over");
    CLI11_PARSE(app, argc, argv);

    const auto cases = cases_in(folder);
    if (!cases) {
        return report(cases.error());
    }
    const std::vector<CaseScore> scores = read_cases(*cases);
    const std::vector<FigureRow> rows = figure_rows(*cases, scores);
    print_table(rows);
    if (!json_file.empty()) {
        const auto written = write_whole_file(json_file, true, [&](std::ostream& out) -> Outcome<void> {
            out << table_json(rows, scores).dump(1) << '\n';
            return {};
        });
        if (!written) {
            return report(written.error());
        }
    }
    return 0;
}
