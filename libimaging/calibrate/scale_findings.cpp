#include "libimaging/calibrate/scale_findings.h"

#include <array>
#include <cmath>
#include <cstdio>

namespace pithward {

namespace {

constexpr double disagreement_is_real = 0.95; ///< Probability that the ruler is right against the tag (assumed).
constexpr double along_ruler = 0.866;         ///< Cosine: a path within 30 degrees of a ruler is measured by it.

std::string number(const char* format, double value) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), format, value);
    return text.data();
}

std::string name_of(const Calibration& told) {
    return told.source == Calibration::Source::FileTag ? "the file's tag" : "the resolution given";
}

void add_finding(Reading& reading, std::string reason, std::string proposal, double probability) {
    Finding finding;
    finding.id = FindingId{static_cast<std::int64_t>(reading.findings.size()) + 1};
    finding.kind = FindingKind::Scale;
    finding.at = reading.path.legs.front().points.front();
    finding.reason = std::move(reason);
    finding.proposal = std::move(proposal);
    finding.probability = probability;
    reading.findings.push_back(std::move(finding));
}

/// Another graduation with which ruler and told scale would agree, as words; empty if there is none.
std::string other_graduation(const RulerScale& scale, double told_px_per_mm, const std::string& told) {
    if (!scale.graduation) {
        return "";
    }
    const double step_px = scale.px_per_mm * kind_of(*scale.graduation).spacing.value();
    for (const GraduationKind& kind : graduation_kinds()) {
        if (kind.graduation != *scale.graduation &&
            std::abs(step_px / kind.spacing.value() / told_px_per_mm - 1.0) < 2.0 * greatest_disagreement) {
            return "; if one step of its marks is " + kind.word + ", " + told + " is right";
        }
    }
    return "";
}

} // namespace

bool differ(const Calibration& one, const Calibration& other) {
    const auto apart = [](double a, double b) { return std::abs(a / b - 1.0) > greatest_disagreement; };
    return apart(one.px_per_mm_x, other.px_per_mm_x) || apart(one.px_per_mm_y, other.px_per_mm_y);
}

std::optional<ScaleDisagreement> disagreement(const RulerScale& scale, const Calibration& told) {
    const double told_px_per_mm = px_per_mm_along(told, scale.normal);
    const double off = scale.px_per_mm / told_px_per_mm - 1.0;
    if (std::abs(off) <= greatest_disagreement || std::abs(off) <= 2.0 * scale.relative_sd) {
        return std::nullopt;
    }
    const std::string name = name_of(told);
    return ScaleDisagreement{off,
                             "the ruler gives " + number("%.2f", scale.px_per_mm) + " pixels to the millimetre, " +
                                 name + " " + number("%.2f", told_px_per_mm) + ": they differ by " +
                                 number("%.1f", 100.0 * std::abs(off)) + " %",
                             other_graduation(scale, told_px_per_mm, name)};
}

void add_scale_findings(Reading& reading, const RulerCalibration& rulers, const std::optional<Calibration>& told) {
    if (reading.path.legs.empty() || reading.path.legs.front().points.size() < 2) {
        return;
    }
    for (const RulerScale& scale : rulers.scales) {
        if (const auto differs = told ? disagreement(scale, *told) : std::nullopt) {
            add_finding(reading, differs->reason,
                        "the ruler's scale was taken; check that the line runs along it" + differs->otherwise,
                        disagreement_is_real);
        }
        if (scale.graduation && scale.graduation_by_mark_lengths &&
            *scale.graduation != *scale.graduation_by_mark_lengths) {
            add_finding(reading,
                        "the lengths of the ruler's marks look like steps of " +
                            kind_of(*scale.graduation_by_mark_lengths).word + ", but " +
                            kind_of(*scale.graduation).word + " was given",
                        "look at the ruler; measure again with the other graduation if that is right", 0.5);
        }
    }
    const std::vector<ImagePoint>& path = reading.path.legs.front().points;
    const ImagePoint chord = path.back() - path.front();
    const ImagePoint normal = rulers.scales.front().normal;
    const double length = std::hypot(chord.x, chord.y);
    if (rulers.scales.size() == 1 && length > 0.0 &&
        std::abs(chord.x * normal.x + chord.y * normal.y) < along_ruler * length) {
        add_finding(reading, "the ruler lies across this core, so the scale along the core was not measured",
                    "give a second ruler line that runs the core's way", 0.5);
    }
}

void add_seen_ruler_finding(Reading& reading, const RulerScale& seen, const Calibration& told) {
    const auto differs = disagreement(seen, told);
    if (!differs || reading.path.legs.empty() || reading.path.legs.front().points.empty()) {
        return;
    }
    const auto place = [](ImagePoint p) { return number("%.0f", p.x) + "," + number("%.0f", p.y); };
    add_finding(reading, differs->reason,
                "the scale told was kept; look at the ruler and measure again along it, from " + place(seen.line.from) +
                    " to " + place(seen.line.to) + differs->otherwise,
                disagreement_is_real);
}

} // namespace pithward
