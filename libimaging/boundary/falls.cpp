#include "libimaging/boundary/falls.h"

#include <algorithm>
#include <cstddef>

namespace pithward::boundary {

namespace {

struct Stretch {
    int top;
    int bottom;
};

/// Monotone falling stretches, in order.
std::vector<Stretch> monotone(const std::vector<float>& p) {
    std::vector<Stretch> out;
    const int n = static_cast<int>(p.size());
    for (int i = 0; i + 1 < n;) {
        if (p[static_cast<std::size_t>(i) + 1] >= p[static_cast<std::size_t>(i)]) {
            ++i;
            continue;
        }
        const int top = i;
        while (i + 1 < n && p[static_cast<std::size_t>(i) + 1] < p[static_cast<std::size_t>(i)]) {
            ++i;
        }
        out.push_back({top, i});
    }
    return out;
}

float height(const std::vector<float>& p, const Stretch& stretch) {
    return p[static_cast<std::size_t>(stretch.top)] - p[static_cast<std::size_t>(stretch.bottom)];
}

/// Joins neighbours whose counter-rise is a ripple, smallest ripple first until none is left.
void join_ripples(const std::vector<float>& p, std::vector<Stretch>& stretches) {
    bool joined = true;
    while (joined) {
        joined = false;
        std::vector<Stretch> out;
        for (const Stretch& stretch : stretches) {
            if (!out.empty()) {
                const float rise =
                    p[static_cast<std::size_t>(stretch.top)] - p[static_cast<std::size_t>(out.back().bottom)];
                if (rise < static_cast<float>(ripple) * std::min(height(p, out.back()), height(p, stretch))) {
                    out.back().bottom = stretch.bottom;
                    joined = true;
                    continue;
                }
            }
            out.push_back(stretch);
        }
        stretches.swap(out);
    }
}

/// Columns between `stretch.top` and `.bottom` at which it is to be divided.
std::vector<int> shoulders(const std::vector<float>& p, const Stretch& stretch) {
    std::vector<int> cuts;
    const auto gradient = [&](int i) { return p[static_cast<std::size_t>(i)] - p[static_cast<std::size_t>(i) + 1]; };
    float peak = 0.0F;   // Steepest so far since the last cut.
    float valley = 0.0F; // Least steep since that peak.
    int valley_at = stretch.top;
    for (int i = stretch.top; i < stretch.bottom; ++i) {
        const float g = gradient(i);
        const bool still_rises = g >= peak && valley >= peak;
        if (!still_rises && g < valley) {
            valley = g;
            valley_at = i;
            continue;
        }
        const bool cut = !still_rises && valley < static_cast<float>(shoulder) * std::min(peak, g);
        if (cut) {
            cuts.push_back(valley_at);
        }
        if (still_rises || cut || g > peak) {
            peak = g;
            valley = g;
            valley_at = i;
        }
    }
    return cuts;
}

Fall describe(const std::vector<float>& p, const Stretch& stretch) {
    Fall fall;
    fall.top = stretch.top;
    fall.bottom = stretch.bottom;
    fall.height = static_cast<double>(height(p, stretch));
    for (int i = stretch.top; i < stretch.bottom; ++i) {
        const float a = p[static_cast<std::size_t>(i)];
        const float b = p[static_cast<std::size_t>(i) + 1];
        fall.steepest = std::max(fall.steepest, static_cast<double>(a - b));
    }
    fall.column = column_of(p, fall, 0.5);
    return fall;
}

} // namespace

double column_of(const std::vector<float>& profile, const Fall& fall, double share) {
    const auto top = static_cast<double>(profile[static_cast<std::size_t>(fall.top)]);
    const double goal = top - share * fall.height;
    double column = fall.top;
    for (int i = fall.top; i < fall.bottom; ++i) {
        const auto a = static_cast<double>(profile[static_cast<std::size_t>(i)]);
        const auto b = static_cast<double>(profile[static_cast<std::size_t>(i) + 1]);
        if (a >= goal && b < goal) {
            column = i + (a - goal) / (a - b);
        }
    }
    return column;
}

std::vector<Fall> falls_of(const std::vector<float>& profile, double least) {
    std::vector<Stretch> stretches = monotone(profile);
    join_ripples(profile, stretches);
    std::vector<Fall> falls;
    for (const Stretch& stretch : stretches) {
        int top = stretch.top;
        std::vector<int> ends = shoulders(profile, stretch);
        ends.push_back(stretch.bottom);
        for (const int end : ends) {
            Fall fall = describe(profile, {top, end});
            if (fall.height >= least) {
                falls.push_back(fall);
            }
            top = end;
        }
    }
    for (std::size_t k = 0; k < falls.size(); ++k) {
        const int end = k + 1 < falls.size() ? falls[k + 1].top : static_cast<int>(profile.size()) - 1;
        const auto from = profile.begin() + falls[k].bottom;
        const auto to = profile.begin() + std::max(end, falls[k].bottom) + 1;
        falls[k].rise_after = static_cast<double>(*std::max_element(from, to) - *from);
        for (auto at = from; at + 1 < to; ++at) {
            falls[k].steepest_rise = std::max(falls[k].steepest_rise, static_cast<double>(*(at + 1) - *at));
        }
    }
    return falls;
}

std::vector<Fall> divided(const std::vector<Fall>& falls, const std::vector<float>& finer, double share) {
    std::vector<Fall> out;
    for (const Fall& fall : falls) {
        const std::vector<float> stretch(finer.begin() + fall.top, finer.begin() + fall.bottom + 1);
        std::vector<Fall> parts = falls_of(stretch, share * fall.height);
        if (parts.size() < 2) {
            out.push_back(fall);
            continue;
        }
        for (Fall& part : parts) {
            part.rise_after = part.height; // Blur hides how far it rises again.
            part.steepest_rise = part.steepest;
            part.own_rise = false;
            part.column += fall.top;
            part.top += fall.top;
            part.bottom += fall.top;
            out.push_back(part);
        }
        out.back().rise_after = fall.rise_after;
        out.back().steepest_rise = fall.steepest_rise;
    }
    return out;
}

} // namespace pithward::boundary
