#include "libimaging/boundary/texture.h"

#include "libimaging/boundary/filters.h"
#include "libimaging/boundary/flow.h"
#include "libimaging/robust/median.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace pithward::boundary {

namespace {

constexpr double half_breadth_mm = 1.1;
constexpr double noise_mm = 0.03;
constexpr double least_spread = 0.004;

} // namespace

std::vector<ColumnLook> looks_of(const Lanes& lanes, const FlatStrip& strip, int columns, int held) {
    const int half = std::min(strip.centre(), static_cast<int>(half_breadth_mm / strip.lane_mm));
    const cv::Range middle(strip.centre() - half, strip.centre() + half + 1);
    cv::Mat1f flow = strip.flow_mm.rowRange(middle).colRange(0, columns).clone();
    for (int row = 0; row < flow.rows; ++row) {
        flow.row(row).colRange(0, std::min(held, columns)).setTo(flow(row, std::min(held, columns - 1)));
    }
    std::array<cv::Mat1f, 3> logs;
    for (std::size_t c = 0; c < logs.size(); ++c) {
        const cv::Mat1f patch = lanes.rgb[c].rowRange(middle).colRange(0, columns);
        cv::Mat1f log;
        cv::log(patch + 0.02F, log);
        logs[c] = smooth(flatten(log, flow, strip.px_mm), 0.0, noise_mm / strip.px_mm);
    }
    std::vector<ColumnLook> looks(static_cast<std::size_t>(columns));
    std::vector<double> tone(static_cast<std::size_t>(flow.rows));
    std::vector<double> red(tone.size());
    std::vector<double> blue(tone.size());
    for (int c = 0; c < columns; ++c) {
        ColumnLook& look = looks[static_cast<std::size_t>(c)];
        look.solid = 0.0;
        for (int r = 0; r < flow.rows; ++r) {
            const auto k = static_cast<std::size_t>(r);
            tone[k] = (static_cast<double>(logs[0](r, c)) + static_cast<double>(logs[1](r, c)) +
                       static_cast<double>(logs[2](r, c))) /
                      3.0;
            red[k] = static_cast<double>(logs[0](r, c) - logs[1](r, c));
            blue[k] = static_cast<double>(logs[2](r, c) - logs[1](r, c));
            look.solid += static_cast<double>(strip.weight(middle.start + r, c)) / flow.rows;
        }
        look.tone = median_in_place(tone);
        look.red = median_in_place(red);
        look.blue = median_in_place(blue);
        for (double& t : tone) {
            t = std::abs(t - look.tone);
        }
        look.rough = std::log(deviation_of_median * median_in_place(tone) + least_spread);
    }
    return looks;
}

} // namespace pithward::boundary
