#include "libcore/specimen/reading.h"

namespace pithward {

std::string word(Reading::State state) {
    switch (state) {
    case Reading::State::Proposed:
        return "proposed";
    case Reading::State::Marked:
        return "marked";
    case Reading::State::Passed:
        return "passed";
    case Reading::State::Returned:
        return "returned";
    }
    return "proposed";
}

} // namespace pithward
