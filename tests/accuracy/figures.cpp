#include "tests/accuracy/figures.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace pithward::accuracy {

namespace {

constexpr double least_confidence = 0.05; ///< Sure rejections must not thin the error out.
constexpr double doubtful_from = 0.1;
constexpr double doubtful_to = 0.9;
constexpr double normal_spread = 1.4826; ///< 1 / 0.6745, the upper quartile of the normal distribution.
constexpr double far = 4.0;

std::optional<double> ratio(double part, double whole) {
    return whole > 0.0 ? std::optional(part / whole) : std::nullopt;
}

std::optional<double> median(std::vector<double> values) {
    if (values.empty()) {
        return std::nullopt;
    }
    std::ranges::sort(values);
    const std::size_t half = values.size() / 2;
    return values.size() % 2 == 1 ? values[half] : 0.5 * (values[half - 1] + values[half]);
}

std::vector<double> magnitudes(std::span<const double> values) {
    std::vector<double> all;
    for (const double value : values) {
        all.push_back(std::abs(value));
    }
    return all;
}

double f1(int found, int wrong, int overlooked) {
    return ratio(2.0 * found, 2.0 * found + wrong + overlooked).value_or(0.0);
}

template <typename T>
void append(std::vector<T>& all, const std::vector<T>& more) {
    all.insert(all.end(), more.begin(), more.end());
}

} // namespace

CalibrationError calibration_error(std::span<const Chance> chances, double from, double to) {
    struct Bin {
        double said = 0.0;
        int annual = 0;
    };
    std::array<Bin, 10> bins;
    CalibrationError error;
    for (const Chance& chance : chances) {
        if (chance.confidence >= from && chance.confidence <= to) {
            Bin& bin = bins[std::min<std::size_t>(static_cast<std::size_t>(chance.confidence * 10.0), 9)];
            bin.said += chance.confidence;
            bin.annual += chance.annual ? 1 : 0;
            ++error.candidates;
        }
    }
    double sum = 0.0;
    for (const Bin& bin : bins) {
        sum += std::abs(bin.said - bin.annual);
    }
    error.expected = ratio(sum, error.candidates);
    return error;
}

Spread spread_of(std::span<const double> normalised) {
    const std::vector<double> sizes = magnitudes(normalised);
    const auto beyond = std::ranges::count_if(sizes, [](double size) { return size > far; });
    Spread spread;
    spread.values = static_cast<int>(sizes.size());
    spread.spread = median(sizes);
    if (spread.spread) {
        *spread.spread *= normal_spread;
    }
    spread.share_far = ratio(static_cast<double>(beyond), spread.values);
    return spread;
}

double f1_of(const CaseScore& core) {
    return f1(core.found, core.count(Mistake::Kind::False), core.count(Mistake::Kind::Overlooked));
}

Figures figures_of(std::span<const CaseScore> cores) {
    CaseScore all;
    Figures figures;
    for (const CaseScore& core : cores) {
        all.proposed += core.proposed;
        all.found += core.found;
        all.places += core.places;
        append(all.mistakes, core.mistakes);
        append(all.errors_px, core.errors_px);
        append(all.position_z, core.position_z);
        append(all.width_z, core.width_z);
        append(all.chances, core.chances);
        figures.worst_f1 = std::min(figures.worst_f1.value_or(1.0), f1_of(core));
    }
    figures.cores = static_cast<int>(cores.size());
    figures.rings = all.rings();
    figures.found = all.found;
    figures.wrong = all.count(Mistake::Kind::False);
    figures.f1 = figures.rings + figures.wrong > 0 ? std::optional(f1_of(all)) : std::nullopt;
    figures.escaped = ratio(100.0 * all.escaped(), figures.rings);
    figures.asked = ratio(all.places, all.proposed);
    figures.error_px = median(magnitudes(all.errors_px));
    figures.bias_px = median(all.errors_px);
    figures.confidence = calibration_error(all.chances, least_confidence, 1.0);
    figures.doubtful = calibration_error(all.chances, doubtful_from, doubtful_to);
    figures.position = spread_of(all.position_z);
    figures.width = spread_of(all.width_z);
    return figures;
}

} // namespace pithward::accuracy
