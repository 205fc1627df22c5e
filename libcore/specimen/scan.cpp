#include "libcore/specimen/scan.h"

#include <cmath>

namespace pithward {

namespace {

/// True for a tag that a program writes without knowing the resolution.
bool is_default_tag(double dpi) {
    return std::abs(dpi - 72.0) < 0.5 || std::abs(dpi - 96.0) < 0.5;
}

std::string whole(double value) {
    return std::to_string(std::lround(value));
}

} // namespace

Outcome<Calibration> believed_calibration(const Scan& scan, std::optional<double> given_dpi) {
    const auto at_file = [&](Fault fault) {
        fault.where = scan.file;
        return fault;
    };
    if (given_dpi) {
        return Calibration::from_dpi(*given_dpi, *given_dpi, Calibration::Source::Given).map_error(at_file);
    }
    if (!scan.tag_dpi_x || !scan.tag_dpi_y) {
        return fail(scan.file, "the file does not say its resolution", "give the scanner's resolution with --dpi");
    }
    if (is_default_tag(*scan.tag_dpi_x) || is_default_tag(*scan.tag_dpi_y)) {
        return fail(scan.file,
                    "its resolution tag of " + whole(*scan.tag_dpi_x) +
                        " dpi is what programs write when they don't know",
                    "give the scanner's resolution with --dpi");
    }
    return Calibration::from_dpi(*scan.tag_dpi_x, *scan.tag_dpi_y, Calibration::Source::FileTag).map_error(at_file);
}

} // namespace pithward
