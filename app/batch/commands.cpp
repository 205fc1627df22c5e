#include "app/batch/chronology.h"
#include "app/batch/climate.h"
#include "app/batch/command.h"
#include "app/batch/convert.h"
#include "app/batch/create.h"
#include "app/batch/crossdate.h"
#include "app/batch/export.h"
#include "app/batch/history.h"
#include "app/batch/labels.h"
#include "app/batch/measure.h"
#include "app/batch/package.h"
#include "app/batch/report.h"
#include "app/batch/show.h"

#include <array>
#include <cstdio>

namespace pithward::batch {

std::span<const Command> commands() {
    static const std::array all{
        Command{"measure", "Find ring boundaries on scans and measure them", attach_measure},
        Command{"create", "Make a project from a field sheet and a folder of scans", attach_create},
        Command{"show", "List a project's cores and their readings", attach_show},
        Command{"history", "Tell who did what in a project, and when", attach_history},
        Command{"export", "Write the series of a project, with how much of them was reviewed", attach_export},
        Command{"report", "Tell of a project as a PDF or HTML: site, method, cores, dating, review", attach_report},
        Command{"package", "Put series, metadata, report and checksums in one folder or zip for the archive",
                attach_package},
        Command{"crossdate", "Hold series against each other and find rings missing or too many", attach_crossdate},
        Command{"chronology", "Detrend series and average them", attach_chronology},
        Command{"climate", "Hold a chronology against a monthly climate series", attach_climate},
        Command{"labels", "Print labels with codes for cores, and sheets for the field", attach_labels},
        Command{"convert", "Convert between series formats", attach_convert},
    };
    return all;
}

void refuse_empty_values(CLI::App& parser) {
    for (CLI::Option* option : parser.get_options([](CLI::Option* one) { return one->get_items_expected_max() > 0; })) {
        option->check(CLI::Validator(
            [](const std::string& value) {
                return value.empty() ? std::string("an empty value is given") : std::string();
            },
            ""));
    }
}

void warn(const Fault& fault) {
    std::fprintf(stderr, "pithward: %s\n", fault.line().c_str());
}

Exit report(const Fault& fault) {
    warn(fault);
    return Exit::Unusable;
}

} // namespace pithward::batch
