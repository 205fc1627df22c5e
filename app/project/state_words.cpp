#include "app/project/state_words.h"

#include <QCoreApplication>

namespace pithward::bench {

QString state_in_words(std::string_view state) {
    const auto tr = [](const char* text) { return QCoreApplication::translate("ReadingState", text); };
    if (state == "proposed") {
        return tr("proposed");
    }
    if (state == "marked") {
        return tr("marked");
    }
    if (state == "passed") {
        return tr("passed");
    }
    return state == "returned" ? tr("returned") : QString();
}

} // namespace pithward::bench
