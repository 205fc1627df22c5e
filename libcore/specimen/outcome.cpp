#include "libcore/specimen/outcome.h"

namespace pithward {

std::string in_one_line(std::string text) {
    constexpr char del = 0x7F;
    for (char& c : text) {
        if (static_cast<unsigned char>(c) < ' ' || c == del) {
            c = ' ';
        }
    }
    return text;
}

std::string Fault::line() const {
    std::string text = where.empty() ? what : where + ": " + what;
    if (!remedy.empty()) {
        text += "; " + remedy;
    }
    return in_one_line(std::move(text)); // whatever an outside library or a stranger's file put into it
}

} // namespace pithward
