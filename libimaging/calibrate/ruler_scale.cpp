#include "libimaging/calibrate/ruler_scale.h"

#include "libimaging/calibrate/judge_graduation.h"
#include "libimaging/calibrate/ruler_marks.h"

#include <algorithm>
#include <cmath>

namespace pithward {

using namespace calibrate;

namespace {

constexpr double agrees = 0.1; ///< Relative: a graduation that comes so near to the told scale is taken.

double ratio_of(const std::optional<Calibration>& told) {
    return told ? told->px_per_mm_y / told->px_per_mm_x : 1.0;
}

/// The graduation with which the marks come nearest to the told scale, if it is near at all.
std::optional<Graduation> graduation_by(const Calibration& told, ImagePoint normal, double step_px) {
    for (const GraduationKind& kind : graduation_kinds()) {
        const double scale = step_px / kind.spacing.value();
        if (std::abs(scale / px_per_mm_along(told, normal) - 1.0) < agrees) {
            return kind.graduation;
        }
    }
    return std::nullopt;
}

} // namespace

double px_per_mm_along(const Calibration& calibration, ImagePoint normal) {
    return std::hypot(normal.x * calibration.px_per_mm_x, normal.y * calibration.px_per_mm_y);
}

Outcome<RulerScale> scale_between(const Scan& scan, const RulerLine& line, Millimetres apart,
                                  const std::optional<Calibration>& told) {
    if (const auto usable = line.validate(scan); !usable) {
        return tl::unexpected(usable.error());
    }
    if (!(apart.value() >= 0.1 && apart.value() <= 10'000.0)) {
        return fail(scan.file, "the distance of the ruler's two points must lie between 0.1 and 10,000 mm",
                    "give the distance in millimetres");
    }
    const double ratio = ratio_of(told);
    const ImagePoint step = line.to - line.from;
    RulerScale scale;
    scale.line = line;
    // Marks square to the line on the wood are not quite so in pixels that aren't square.
    const ImagePoint normal{step.x * ratio, step.y / ratio};
    scale.normal = normal * (1.0 / std::hypot(normal.x, normal.y));
    scale.px_per_mm = std::abs(step.x * scale.normal.x + step.y * scale.normal.y) / apart.value();
    scale.relative_sd = std::sqrt(2.0) * point_sd_px / line.length_px();
    return scale;
}

Outcome<RulerScale> scale_along(const ScanFile& scan, const RulerLine& line, std::optional<Graduation> graduation,
                                const std::optional<Calibration>& told) {
    if (const auto usable = line.validate(scan.header()); !usable) {
        return tl::unexpected(usable.error());
    }
    const auto marks = measure_marks(scan, line);
    if (!marks) {
        return tl::unexpected(marks.error());
    }
    const auto band = band_of_lengths(scan, *marks);
    if (!band) {
        return tl::unexpected(band.error());
    }
    RulerScale scale;
    scale.line = line;
    const double stretch = std::hypot(1.0, marks->rows.slant);
    scale.normal = (line.along() - line.across() * marks->rows.slant) * (1.0 / stretch);
    const double step_px = marks->rows.period / stretch;
    const auto judged = judge_graduation(mark_lengths(*band, strengths(*band, marks->rows), marks->rows));
    if (judged && judged->lead >= sure_lead) {
        scale.graduation_by_mark_lengths = judged->graduation;
    }
    scale.graduation = graduation;
    if (!scale.graduation) {
        scale.basis = RulerScale::Basis::LengthsOfMarks;
        scale.graduation = scale.graduation_by_mark_lengths;
    }
    if (!scale.graduation && told) {
        scale.basis = RulerScale::Basis::ToldScale;
        scale.graduation = graduation_by(*told, scale.normal, step_px);
    }
    if (!scale.graduation) {
        return fail(scan.header().file, "it can't be told what one step of the ruler's marks is",
                    "say whether it is 1mm, 0.5mm or 1/16in");
    }
    const double step_mm = kind_of(*scale.graduation).spacing.value();
    scale.px_per_mm = step_px / step_mm;
    scale.relative_sd =
        std::hypot(marks->period_sd / marks->rows.period, marks->rows.slant * marks->slant_sd / (stretch * stretch));
    scale.marks = marks->good;
    scale.scatter_mm = marks->scatter / stretch / scale.px_per_mm;
    return scale;
}

} // namespace pithward
