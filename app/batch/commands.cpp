#include "app/batch/chronology.h"
#include "app/batch/command.h"
#include "app/batch/convert.h"
#include "app/batch/crossdate.h"
#include "app/batch/measure.h"

#include <array>
#include <cstdio>
#include <filesystem>

namespace pithward::batch {

std::span<const Command> commands() {
    static const std::array all{
        Command{"measure", "Find ring boundaries on scans and measure them", attach_measure},
        Command{"crossdate", "Hold series against each other and find rings missing or too many", attach_crossdate},
        Command{"chronology", "Detrend series and average them", attach_chronology},
        Command{"convert", "Convert between series formats", attach_convert},
    };
    return all;
}

Outcome<void> check_free(const std::string& file, const CommonOptions& common) {
    std::error_code ignored;
    if (!file.empty() && file != "-" && !common.force && std::filesystem::exists(file, ignored)) {
        return fail(file, "the file is there already", "choose another name or give --force");
    }
    return {};
}

Exit report(const Fault& fault) {
    std::fprintf(stderr, "pithward: %s\n", fault.line().c_str());
    return Exit::Unusable;
}

} // namespace pithward::batch
