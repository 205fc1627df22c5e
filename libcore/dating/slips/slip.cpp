#include "libcore/dating/slips/slip.h"

namespace pithward::dating {

std::string words_of(const Slip& slip) {
    std::string words = "ring " + std::to_string(slip.ring_year());
    words += slip.kind == Slip::Kind::RingMissing ? " is missing (" : " is counted twice (";
    words += std::to_string(slip.ring_from());
    words += slip.ring_from() == slip.ring_to() ? " alone" : " to " + std::to_string(slip.ring_to());
    return words + ")";
}

} // namespace pithward::dating
