#include "libcore/specimen/outcome.h"

namespace pithward {

std::string Fault::line() const {
    std::string text = where.empty() ? what : where + ": " + what;
    if (!remedy.empty()) {
        text += "; " + remedy;
    }
    // One fault is one line, whatever an outside library put into its message.
    for (char& c : text) {
        if (c == '\n' || c == '\r') {
            c = ' ';
        }
    }
    return text;
}

} // namespace pithward
