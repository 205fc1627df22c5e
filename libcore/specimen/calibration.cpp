#include "libcore/specimen/calibration.h"

#include <cmath>

namespace pithward {

Millimetres Calibration::distance(ImagePoint a, ImagePoint b) const {
    return Millimetres(std::hypot((b.x - a.x) / px_per_mm_x, (b.y - a.y) / px_per_mm_y));
}

Outcome<Calibration> Calibration::from_dpi(double dpi_x, double dpi_y, Source source) {
    const auto usable = [](double dpi) { return dpi >= least_dpi && dpi <= greatest_dpi; };
    if (!usable(dpi_x) || !usable(dpi_y)) {
        return fail("", "a resolution outside 100 to 50,000 dpi can't be used",
                    "give the scanner's resolution, for instance --dpi 1200");
    }
    return Calibration{dpi_x / millimetres_per_inch, dpi_y / millimetres_per_inch, assumed_relative_sd, source};
}

std::string word(Calibration::Source source) {
    switch (source) {
    case Calibration::Source::FileTag:
        return "file tag";
    case Calibration::Source::Given:
        return "given";
    case Calibration::Source::Ruler:
        return "ruler";
    }
    return "given";
}

} // namespace pithward
