#include "app/batch/chronology.h"
#include "app/batch/command.h"
#include "app/batch/convert.h"
#include "app/batch/crossdate.h"
#include "app/batch/measure.h"

#include <array>
#include <cstdio>

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

Exit report(const Fault& fault) {
    std::fprintf(stderr, "pithward: %s\n", fault.line().c_str());
    return Exit::Unusable;
}

} // namespace pithward::batch
