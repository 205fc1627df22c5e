#include "libimaging/label/placed_cores.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <set>
#include <tuple>
#include <utility>

namespace pithward {

namespace {

using field::ScanPlace;

/// How far the picture is turned in the view.
double turn_of(int orientation) {
    switch (orientation) {
    case 3:
    case 4:
        return std::numbers::pi;
    case 5:
    case 6:
        return 0.5 * std::numbers::pi;
    case 7:
    case 8:
        return -0.5 * std::numbers::pi;
    default:
        return 0.0;
    }
}

/// Whether two paths are the sides of one core, which meet at its pith.
bool are_sides(const FoundCore& a, const FoundCore& b) {
    return a.pith && b.pith && a.pith->path_ends_there && b.pith->path_ends_there && a.pith->at == b.pith->at;
}

/// A core's ends and breadth in the view, in millimetres.
struct LaidCore {
    std::size_t core = 0;
    ImagePoint middle;
    ImagePoint span; ///< From one end to the other, toward the right or down.
    double breadth = 0.0;
};

LaidCore laid(std::size_t core, const WholeCore& paths, std::span<const FoundCore> found,
              const Calibration& calibration, double turn) {
    const FoundCore& first = found[paths.front()];
    const ImagePoint one_end = first.path.front();
    const ImagePoint other_end = paths.size() > 1 ? found[paths[1]].path.front() : first.path.back();
    const auto in_view = [&](ImagePoint at) {
        const double x = at.x / calibration.px_per_mm_x;
        const double y = at.y / calibration.px_per_mm_y;
        return ImagePoint{x * std::cos(turn) - y * std::sin(turn), x * std::sin(turn) + y * std::cos(turn)};
    };
    const ImagePoint a = in_view(one_end);
    const ImagePoint b = in_view(other_end);
    ImagePoint span = b - a;
    if (std::abs(span.x) > std::abs(span.y) ? span.x < 0.0 : span.y < 0.0) {
        span = span * -1.0;
    }
    return {core, (a + b) * 0.5, span, first.width_mm};
}

/// The order in which cores are counted that all lie about the same way.
std::vector<std::size_t> counted(std::vector<LaidCore> cores) {
    ImagePoint way;
    for (const LaidCore& core : cores) {
        way = way + core.span;
    }
    const double length = std::hypot(way.x, way.y);
    way = length > 0.0 ? way * (1.0 / length) : ImagePoint{1.0, 0.0};
    const bool lie = std::abs(way.x) >= std::abs(way.y);
    const auto along = [&](const LaidCore& core) { return core.middle.x * way.x + core.middle.y * way.y; };
    // Down where they lie, to the right where they stand.
    const auto across = [&](const LaidCore& core) {
        const double to_right_of_way = core.middle.y * way.x - core.middle.x * way.y;
        return lie ? to_right_of_way : -to_right_of_way;
    };
    std::ranges::sort(cores, [&](const LaidCore& a, const LaidCore& b) { return across(a) < across(b); });
    std::vector<std::size_t> order;
    for (std::size_t k = 0; k < cores.size();) {
        std::size_t end = k + 1;
        while (end < cores.size() && across(cores[end]) - across(cores[k]) < 0.5 * cores[k].breadth) {
            ++end;
        }
        const auto row = std::span(cores).subspan(k, end - k);
        std::ranges::sort(row, [&](const LaidCore& a, const LaidCore& b) { return along(a) < along(b); });
        for (const LaidCore& core : row) {
            order.push_back(core.core);
        }
        k = end;
    }
    return order;
}

/// How far a place lies from a core.
struct AwayFrom {
    double mm = std::numeric_limits<double>::max();
    /// Less for what lies beyond the core's end, in line with it, as a label does on the mount.
    double as_label_mm = std::numeric_limits<double>::max();
};

ImagePoint from_stretch(ImagePoint from, ImagePoint to, ImagePoint at) {
    const ImagePoint way = to - from;
    const double square = way.x * way.x + way.y * way.y;
    const ImagePoint off = at - from;
    const double share = square > 0.0 ? std::clamp((off.x * way.x + off.y * way.y) / square, 0.0, 1.0) : 0.0;
    return off - way * share;
}

AwayFrom away_from(const WholeCore& core, std::span<const FoundCore> found, const Calibration& calibration,
                   ImagePoint at) {
    constexpr double beyond_counts = 0.05;
    AwayFrom away;
    for (const std::size_t path : core) {
        const std::vector<ImagePoint>& points = found[path].path;
        const ImagePoint way = points.back() - points.front();
        const double length = std::max(1.0, std::hypot(way.x, way.y));
        for (std::size_t i = 1; i < points.size(); ++i) {
            const ImagePoint off = from_stretch(points[i - 1], points[i], at);
            const double mm = std::hypot(off.x, off.y) / calibration.px_per_mm();
            if (mm < away.mm) {
                const double along = (off.x * way.x + off.y * way.y) / length;
                const double across = (off.y * way.x - off.x * way.y) / length;
                away = {mm, std::hypot(across, beyond_counts * along) / calibration.px_per_mm()};
            }
        }
    }
    return away;
}

/// The core that a place is on, with true; else the one that it is beside.
std::pair<std::size_t, bool> core_near(std::span<const WholeCore> cores, std::span<const FoundCore> found,
                                       const Calibration& calibration, ImagePoint at) {
    AwayFrom least_on;
    AwayFrom least_beside;
    std::optional<std::size_t> on;
    std::size_t beside = 0;
    for (std::size_t i = 0; i < cores.size(); ++i) {
        const AwayFrom away = away_from(cores[i], found, calibration, at);
        if (away.mm <= 0.5 * found[cores[i].front()].width_mm && away.mm < least_on.mm) {
            least_on = away;
            on = i;
        }
        if (away.as_label_mm < least_beside.as_label_mm) {
            least_beside = away;
            beside = i;
        }
    }
    return {on.value_or(beside), on.has_value()};
}

std::string cores_in_words(std::size_t count) {
    return count == 1 ? "1 core" : std::to_string(count) + " cores";
}

Fault other_number(const std::string& scan, std::size_t found, std::size_t told) {
    return {scan, cores_in_words(found) + " found on the scan, " + std::to_string(told) + " told for it",
            "say which is which in the window, or draw the paths there"};
}

} // namespace

std::vector<WholeCore> whole_cores(std::span<const FoundCore> found, const Calibration& calibration, int orientation) {
    std::vector<WholeCore> cores;
    for (std::size_t i = 0; i < found.size(); ++i) {
        const auto other_side = std::ranges::find_if(
            cores, [&](const WholeCore& core) { return core.size() == 1 && are_sides(found[core.front()], found[i]); });
        if (other_side != cores.end()) {
            other_side->push_back(i);
        } else {
            cores.push_back({i});
        }
    }
    std::vector<LaidCore> places;
    for (std::size_t i = 0; i < cores.size(); ++i) {
        places.push_back(laid(i, cores[i], found, calibration, turn_of(orientation)));
    }
    std::vector<WholeCore> in_order;
    for (const std::size_t i : counted(std::move(places))) {
        in_order.push_back(cores[i]);
    }
    return in_order;
}

Outcome<std::vector<std::size_t>> cores_at(std::span<const std::optional<ScanPlace>> places,
                                           std::span<const WholeCore> cores, std::span<const FoundCore> found,
                                           const Calibration& calibration, const std::string& scan) {
    if (places.size() == 1 && cores.size() == 1) {
        return std::vector<std::size_t>{0};
    }
    std::vector<std::size_t> chosen;
    std::set<std::size_t> taken;
    for (const auto& place : places) {
        const ImagePoint* at = place ? std::get_if<ImagePoint>(&*place) : nullptr;
        std::size_t core = 0;
        bool is_on_it = false;
        if (at != nullptr) {
            std::tie(core, is_on_it) = core_near(cores, found, calibration, *at);
        }
        if (!is_on_it && cores.size() != places.size()) {
            return tl::unexpected(other_number(scan, cores.size(), places.size()));
        }
        if (!place) {
            return fail(scan, "nothing tells which of the " + cores_in_words(cores.size()) + " on the scan is which",
                        "say it in the window, or in the field sheet's column scan_place");
        }
        if (at == nullptr) {
            const int number = std::get<int>(*place);
            if (number > static_cast<int>(cores.size())) {
                return fail(scan, "number " + std::to_string(number) + " is told of " + cores_in_words(cores.size()),
                            "say which is which in the window");
            }
            core = static_cast<std::size_t>(number) - 1;
        }
        if (!taken.insert(core).second) {
            return fail(scan, "two of the cores told for the scan would be the same one on it",
                        "say which is which in the window, or in the field sheet's column scan_place");
        }
        chosen.push_back(core);
    }
    return chosen;
}

} // namespace pithward
