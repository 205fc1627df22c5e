#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/units.h"

#include <string>

namespace pithward {

/// How pixels of one scan become millimetres. The two directions may differ.
struct Calibration {
    enum class Source { FileTag, Given, Ruler };

    double px_per_mm_x = 0.0;
    double px_per_mm_y = 0.0;
    /// Relative standard deviation of the scale: common to all rings of a scan, kept apart from the `sd` of single
    /// widths.
    double relative_sd = 0.0;
    Source source = Source::Given;

    /// Distance between two places of the scan.
    [[nodiscard]] Millimetres distance(ImagePoint a, ImagePoint b) const;
    /// Mean scale, for sizes without a direction.
    [[nodiscard]] double px_per_mm() const { return 0.5 * (px_per_mm_x + px_per_mm_y); }
    /// Dots per inch along x.
    [[nodiscard]] double dpi_x() const { return px_per_mm_x * millimetres_per_inch; }
    [[nodiscard]] double dpi_y() const { return px_per_mm_y * millimetres_per_inch; }

    /// A calibration from dots per inch. Fails unless both lie in `least_dpi` to `greatest_dpi`.
    [[nodiscard]] static Outcome<Calibration> from_dpi(double dpi_x, double dpi_y, Source source);

    static constexpr double millimetres_per_inch = 25.4;
    static constexpr double least_dpi = 100.0;
    static constexpr double greatest_dpi = 50'000.0;
    /// Relative standard deviation assumed of a flatbed scanner's scale. Assumed: a ruler on the scan tells better.
    static constexpr double assumed_relative_sd = 0.002;

    friend bool operator==(const Calibration&, const Calibration&) = default;
};

/// The word for a source that JSON and reports use: "file tag", "given", "ruler".
[[nodiscard]] std::string word(Calibration::Source source);

} // namespace pithward
