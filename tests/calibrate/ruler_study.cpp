#include "libimaging/calibrate/ruler_scale.h"
#include "tests/support/random_ruler.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <vector>

namespace {

using namespace pithward;
using namespace pithward::test;

double at_share(std::vector<double> values, double share) {
    std::ranges::sort(values);
    return values.empty() ? 0.0 : values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1))];
}

} // namespace

/// Measures rulers drawn by lot and says how far the scale is off, against the truth and against its own deviation.
/// Arguments: how many, and the first seed.
int main(int argc, char** argv) {
    const int count = argc > 1 ? std::atoi(argv[1]) : 100;
    const auto seed = static_cast<std::uint64_t>(argc > 2 ? std::atoll(argv[2]) : 1);
    const bool verbose = argc > 3;
    const TemporaryFolder folder;
    std::vector<double> errors;
    std::vector<double> normalised;
    int refused = 0;
    int wrong = 0;
    for (int i = 0; i < count; ++i) {
        const RandomRuler ruler = random_ruler(seed + static_cast<std::uint64_t>(i));
        const RulerScan scan = scanned(folder, ruler);
        const auto scale = scale_along(scan.scan, scan.line, std::nullopt, std::nullopt);
        if (!scale) {
            ++refused;
            std::printf("seed %llu: %s %g dpi, %d marks: %s\n", static_cast<unsigned long long>(seed + i),
                        kind_of(ruler.graduation).word.c_str(), ruler.dpi, ruler.look.marks,
                        scale.error().what.c_str());
            continue;
        }
        const double truth =
            std::hypot(scale->normal.x * ruler.look.px_per_mm_x, scale->normal.y * ruler.look.px_per_mm_y);
        const double error = scale->px_per_mm / truth - 1.0;
        if (scale->graduation != ruler.graduation) {
            ++wrong;
            std::printf("seed %llu: %s taken for %s, %g dpi, %d marks\n", static_cast<unsigned long long>(seed + i),
                        kind_of(ruler.graduation).word.c_str(), kind_of(*scale->graduation).word.c_str(), ruler.dpi,
                        ruler.look.marks);
            continue;
        }
        errors.push_back(std::abs(error));
        normalised.push_back(std::abs(error) / scale->relative_sd);
        if (verbose || normalised.back() > 4.0) {
            std::printf("seed %llu: %s %g dpi, %d of %d marks: error %.2e, sd %.2e, z %.2f, scatter %.4f mm\n",
                        static_cast<unsigned long long>(seed + i), kind_of(ruler.graduation).word.c_str(), ruler.dpi,
                        scale->marks, ruler.look.marks, error, scale->relative_sd, error / scale->relative_sd,
                        scale->scatter_mm);
        }
    }
    const auto beyond = [&](double z) {
        return 100.0 * static_cast<double>(std::ranges::count_if(normalised, [&](double v) { return v > z; })) /
               static_cast<double>(std::max<std::size_t>(1, normalised.size()));
    };
    std::printf("%d rulers, %d refused, %d with the wrong graduation\n", count, refused, wrong);
    std::printf("relative error: median %.1e, 95 %% %.1e, greatest %.1e\n", at_share(errors, 0.5),
                at_share(errors, 0.95), at_share(errors, 1.0));
    std::printf("error over deviation: 1.48 x median %.2f; beyond 2: %.1f %%, beyond 3: %.1f %%, beyond 4: %.1f %%\n",
                1.4826 * at_share(normalised, 0.5), beyond(2.0), beyond(3.0), beyond(4.0));
    return 0;
}
