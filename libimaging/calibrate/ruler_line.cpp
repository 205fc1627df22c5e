#include "libimaging/calibrate/ruler_line.h"

#include <cmath>

namespace pithward {

double RulerLine::length_px() const {
    return std::hypot(to.x - from.x, to.y - from.y);
}

ImagePoint RulerLine::along() const {
    return (to - from) * (1.0 / length_px());
}

ImagePoint RulerLine::across() const {
    const ImagePoint a = along();
    return {-a.y, a.x};
}

Outcome<void> RulerLine::validate(const Scan& scan) const {
    const auto inside = [&](ImagePoint p) { // false for what is no number, too
        return p.x >= -0.5 && p.y >= -0.5 && p.x <= scan.width - 0.5 && p.y <= scan.height - 0.5;
    };
    if (!inside(from) || !inside(to)) {
        return fail(scan.file,
                    "the ruler line leaves the scan, which is " + std::to_string(scan.width) + " x " +
                        std::to_string(scan.height) + " pixels",
                    "give two points on the scan, along the ruler's marks");
    }
    if (length_px() < least_length_px) {
        return fail(scan.file, "the ruler line is shorter than 40 pixels",
                    "give two points far apart, along the ruler's marks");
    }
    if (length_px() > greatest_length_px) {
        return fail(scan.file, "the ruler line is longer than 300,000 pixels", "give a shorter stretch of the ruler");
    }
    return {};
}

} // namespace pithward
