#include "libimaging/calibrate/mark_lattice.h"

#include "libimaging/calibrate/prominence.h"

#include <opencv2/core.hpp>

#include <algorithm>
#include <cmath>
#include <complex>
#include <numbers>
#include <set>

namespace pithward::calibrate {

namespace {

constexpr std::size_t most_dips = 6000;
constexpr std::size_t most_peaks = 16;
constexpr double on_place = 0.15; ///< Of a period: a mark so near belongs to the place.
constexpr double strong = 0.3;    ///< Of the usual depth: what is less is no mark.

std::vector<double> smoothed(const std::vector<double>& profile, double sign) {
    const std::size_t last = profile.size() - 1;
    std::vector<double> out(profile.size());
    for (std::size_t i = 0; i <= last; ++i) {
        out[i] = sign * (0.25 * profile[i == 0 ? 0 : i - 1] + 0.5 * profile[i] + 0.25 * profile[std::min(last, i + 1)]);
    }
    return out;
}

/// The deepest dips, from left to right. A few that are far deeper than the rest, such as the ruler's end, are cut
/// down.
std::vector<Dip> deepest(const std::vector<double>& profile) {
    std::vector<Dip> dips = dips_of(profile, 1e-4);
    std::ranges::sort(dips, std::greater(), &Dip::depth);
    if (dips.size() < static_cast<std::size_t>(least_marks)) {
        return {};
    }
    dips.resize(std::min(dips.size(), most_dips));
    const double most = 1.5 * dips[least_marks - 1].depth;
    for (Dip& dip : dips) {
        dip.depth = std::min(dip.depth, most);
    }
    std::ranges::sort(dips, std::less(), &Dip::at);
    return dips;
}

double weight(const Dip& dip) {
    return dip.depth * dip.depth;
}

/// Sum of the weights turned by their places at a frequency (per sample).
std::complex<double> turned(const std::vector<Dip>& dips, double frequency) {
    std::complex<double> sum;
    for (const Dip& dip : dips) {
        const double angle = 2.0 * std::numbers::pi * frequency * dip.at;
        sum += weight(dip) * std::complex(std::cos(angle), std::sin(angle));
    }
    return sum;
}

/// Frequencies of the highest peaks in the spectrum of the dips' places.
std::vector<double> peak_frequencies(const std::vector<Dip>& dips, int samples) {
    const int size = cv::getOptimalDFTSize(2 * samples);
    cv::Mat1f train = cv::Mat1f::zeros(1, size);
    for (const Dip& dip : dips) {
        train(0, dip.at) = static_cast<float>(weight(dip));
    }
    cv::Mat2f spectrum;
    cv::dft(train, spectrum, cv::DFT_COMPLEX_OUTPUT);
    const auto power = [&](int k) { return static_cast<double>(cv::norm(spectrum(0, k))); };
    const int from = std::max(1, (least_marks - 1) * size / samples);
    const int to = std::min(size / 2 - 1, static_cast<int>(size / least_period));
    std::vector<std::pair<double, int>> peaks;
    for (int k = from; k <= to; ++k) {
        if (power(k) >= power(k - 1) && power(k) > power(k + 1)) {
            peaks.emplace_back(power(k), k);
        }
    }
    std::ranges::sort(peaks, std::greater());
    peaks.resize(std::min(peaks.size(), most_peaks));
    std::vector<double> frequencies;
    for (const auto& [height, k] : peaks) {
        double best = static_cast<double>(k) / size;
        double greatest = 0.0;
        for (int sixteenth = -16; sixteenth <= 16; ++sixteenth) {
            const double at = k + sixteenth / 16.0;
            if (const double power_there = std::abs(turned(dips, at / size)); power_there > greatest) {
                greatest = power_there;
                best = at / size;
            }
        }
        frequencies.push_back(best);
    }
    return frequencies;
}

/// The depth above which half of the dips' weight lies: that of a mark, however many shallow dips there are.
double usual_depth(std::vector<Dip> dips) {
    std::ranges::sort(dips, std::greater(), &Dip::depth);
    double all = 0.0;
    for (const Dip& dip : dips) {
        all += weight(dip);
    }
    double sum = 0.0;
    const auto half = std::ranges::find_if(dips, [&](const Dip& dip) { return (sum += weight(dip)) >= 0.5 * all; });
    return half == dips.end() ? 0.0 : half->depth;
}

/// The lattice of a frequency, scored by the dips of at least this depth.
std::optional<Lattice> judged(const std::vector<Dip>& dips, double frequency, double least) {
    const double period = 1.0 / frequency;
    const double phase = std::arg(turned(dips, frequency)) / (2.0 * std::numbers::pi);
    double on = 0.0;
    double all = 0.0;
    std::set<int> places;
    for (const Dip& dip : dips) {
        if (dip.depth < least) {
            continue;
        }
        const double steps = dip.at / period - phase;
        all += weight(dip);
        if (std::abs(steps - std::round(steps)) < on_place) {
            on += weight(dip);
            places.insert(static_cast<int>(std::lround(steps)));
        }
    }
    if (places.size() < static_cast<std::size_t>(least_marks)) {
        return std::nullopt;
    }
    const int count = *places.rbegin() - *places.begin() + 1;
    return Lattice{(phase + *places.begin()) * period, period, count,
                   on / all * static_cast<double>(places.size()) / count};
}

} // namespace

std::optional<Lattice> find_lattice(const std::vector<double>& profile) {
    std::optional<Lattice> best;
    if (profile.size() < static_cast<std::size_t>(least_marks * least_period)) {
        return best;
    }
    const int samples = static_cast<int>(profile.size());
    for (const double sign : {1.0, -1.0}) {
        const std::vector<Dip> dips = deepest(smoothed(profile, sign));
        if (dips.empty()) {
            continue;
        }
        const double least = strong * usual_depth(dips);
        for (const double frequency : peak_frequencies(dips, samples)) {
            const auto lattice = judged(dips, frequency, least);
            if (lattice && (!best || lattice->score > best->score)) {
                best = lattice;
            }
        }
    }
    return best;
}

} // namespace pithward::calibrate
