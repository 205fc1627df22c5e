#include "demo-scans/maker/presets.h"
#include "libimaging/calibrate/find_ruler.h"
#include "tests/support/random_ruler.h"
#include "tests/support/rendered_scan.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <string_view>
#include <vector>

namespace {

using namespace pithward;
using namespace pithward::test;

double at_share(std::vector<double> values, double share) {
    std::ranges::sort(values);
    return values.empty() ? 0.0 : values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1))];
}

/// What came of many rulers.
struct Tally {
    int rulers = 0;
    int without = 0;
    int wrong = 0;
    std::vector<double> errors;     ///< Relative.
    std::vector<double> normalised; ///< Over their deviations.

    void add(std::uint64_t seed, const RandomRuler& ruler, const RulerScale& scale) {
        if (scale.graduation != ruler.graduation) {
            ++wrong;
            std::printf("seed %llu: %s taken for %s, %g dpi, %d marks\n", static_cast<unsigned long long>(seed),
                        kind_of(ruler.graduation).word.c_str(), kind_of(*scale.graduation).word.c_str(), ruler.dpi,
                        ruler.look.marks);
            return;
        }
        const double truth =
            std::hypot(scale.normal.x * ruler.look.px_per_mm_x, scale.normal.y * ruler.look.px_per_mm_y);
        const double error = scale.px_per_mm / truth - 1.0;
        errors.push_back(std::abs(error));
        normalised.push_back(std::abs(error) / scale.relative_sd);
        if (normalised.back() > 4.0) {
            std::printf("seed %llu: %s %g dpi, %d of %d marks: error %.1e, deviation %.1e\n",
                        static_cast<unsigned long long>(seed), kind_of(ruler.graduation).word.c_str(), ruler.dpi,
                        scale.marks, ruler.look.marks, error, scale.relative_sd);
        }
    }

    void print(const char* otherwise) const {
        const auto beyond = [&](double z) {
            return 100.0 * static_cast<double>(std::ranges::count_if(normalised, [&](double v) { return v > z; })) /
                   static_cast<double>(std::max<std::size_t>(1, normalised.size()));
        };
        std::printf("%d rulers, %d %s, %d with the wrong graduation\n", rulers, without, otherwise, wrong);
        std::printf("relative error: median %.1e, 95 %% %.1e, greatest %.1e\n", at_share(errors, 0.5),
                    at_share(errors, 0.95), at_share(errors, 1.0));
        std::printf(
            "error over deviation: 1.48 x median %.2f; beyond 2: %.1f %%, beyond 3: %.1f %%, beyond 4: %.1f %%\n",
            1.4826 * at_share(normalised, 0.5), beyond(2.0), beyond(3.0), beyond(4.0));
    }
};

/// Rulers drawn by lot with a line along them.
void along(int count, std::uint64_t seed) {
    const TemporaryFolder folder;
    Tally tally;
    for (int i = 0; i < count; ++i, ++seed, ++tally.rulers) {
        const RandomRuler ruler = random_ruler(seed);
        const RulerScan scan = scanned(folder, ruler);
        const auto scale = scale_along(scan.scan, scan.line, std::nullopt, std::nullopt);
        if (scale) {
            tally.add(seed, ruler, *scale);
            continue;
        }
        ++tally.without;
        std::printf("seed %llu: %s %g dpi, %d marks: %s\n", static_cast<unsigned long long>(seed),
                    kind_of(ruler.graduation).word.c_str(), ruler.dpi, ruler.look.marks, scale.error().what.c_str());
    }
    tally.print("refused");
}

/// The same without a line.
void find(int count, std::uint64_t seed) {
    const TemporaryFolder folder;
    Tally tally;
    for (int i = 0; i < count; ++i, ++seed, ++tally.rulers) {
        const RandomRuler ruler = random_ruler(seed);
        const ScanFile scan = scanned(folder, ruler).scan;
        const auto told = believed_calibration(scan.header(), std::nullopt).value();
        const auto found = find_ruler(scan, told);
        if (found && *found) {
            tally.add(seed, ruler, **found);
        } else {
            ++tally.without;
        }
    }
    tally.print("not found");
}

/// Cores in all conditions with no ruler beside them: none may be found.
void wood(int count, std::uint64_t seed) {
    const TemporaryFolder folder;
    int found_at = 0;
    for (int i = 1; i <= count; ++i) {
        demo::Order order = demo::varied_core(seed, i, std::nullopt);
        order.scenes.front().mount.ruler = false;
        const RenderedScan rendered = rendered_scan(folder, order.scenes.front(), order.format);
        const auto found = find_ruler(rendered.scan, rendered.calibration);
        if (!found || *found) {
            ++found_at;
            std::printf("core %d: %s\n", i, found ? "a ruler was seen" : found.error().line().c_str());
        }
    }
    std::printf("%d cores, a ruler seen on %d\n", count, found_at);
}

} // namespace

/// Measures rulers drawn by lot and says how far the scale is off, against the truth and against its own deviation.
int main(int argc, char** argv) {
    const std::string_view what = argc > 1 ? argv[1] : "";
    const int count = argc > 2 ? std::atoi(argv[2]) : 100;
    const auto seed = static_cast<std::uint64_t>(argc > 3 ? std::atoll(argv[3]) : 1);
    if (what == "along") {
        along(count, seed);
    } else if (what == "find") {
        find(count, seed);
    } else if (what == "wood") {
        wood(count, seed);
    } else {
        std::fprintf(stderr, "ruler_study along|find|wood [HOW MANY] [SEED]\n");
        return 2;
    }
    return 0;
}
