#include "app/picture/legs.h"

#include <algorithm>

namespace pithward::picture {

bool lies_on(const Reading& reading, const std::string& scan) {
    return std::ranges::find(reading.path.legs, scan, &Leg::scan) != reading.path.legs.end();
}

std::string scan_of_leg(const Reading& reading, std::size_t leg) {
    return leg < reading.path.legs.size() ? reading.path.legs[leg].scan : std::string();
}

std::size_t leg_at(const Reading& reading, ImagePoint at) {
    const auto finding = std::ranges::find(reading.findings, at, &Finding::at);
    if (finding != reading.findings.end()) {
        return finding->leg;
    }
    const auto boundary = std::ranges::find(reading.boundaries, at, &Boundary::at);
    return boundary != reading.boundaries.end() ? boundary->leg : 0;
}

bool goes_on_in(const Reading& whole, const Reading& part) {
    if (whole.path.legs.size() < 2 || part.path.legs.empty() || part.boundaries.empty()) {
        return false;
    }
    const std::string& home = part.path.legs.front().scan;
    return whole.path.legs.front().scan != home && std::ranges::any_of(whole.boundaries, [&](const Boundary& boundary) {
               return scan_of_leg(whole, boundary.leg) == home && boundary.at == part.boundaries.back().at;
           });
}

} // namespace pithward::picture
