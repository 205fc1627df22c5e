#include "app/project/state_words.h"

#include <QCoreApplication>

namespace pithward::bench {

namespace {

struct ReadingState {
    Q_DECLARE_TR_FUNCTIONS(ReadingState)
};

} // namespace

QString state_in_words(std::string_view state) {
    if (state == "proposed") {
        return ReadingState::tr("proposed");
    }
    if (state == "marked") {
        return ReadingState::tr("marked");
    }
    if (state == "passed") {
        return ReadingState::tr("passed");
    }
    return state == "returned" ? ReadingState::tr("returned") : QString();
}

} // namespace pithward::bench
