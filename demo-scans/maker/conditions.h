#pragma once

#include "demo-scans/maker/random.h"
#include "demo-scans/maker/scene.h"

#include <string>
#include <vector>

namespace pithward::demo {

/// A stem and a number of at least two digits.
[[nodiscard]] std::string numbered(const char* stem, int number);

/// What every scan has a little of, and differs in: size, tilt, pith, mount, light, scanner.
void everyday(Scene& scene, Random& random);

[[nodiscard]] Timber some_timber(WoodType wood, Random& random);

/// Growth of a usual core of the scene's timber, not longer than a core is.
void give_growth(Scene& scene, Random& random);

/// Grown widths from bark to pith as given ones, each at least a clear ring's quarter of a millimetre.
[[nodiscard]] std::vector<double> clear_widths(const Scene& scene, Random& random);

/// A year with a ring on the core, not among the outermost ones.
[[nodiscard]] int some_year(const Scene& scene, Random& random);

/// Up to `count` of them, not near each other.
[[nodiscard]] std::vector<int> some_years(const Scene& scene, int count, Random& random);

/// `length` years in a row.
[[nodiscard]] Years some_stretch(const Scene& scene, int length, double strength, Random& random);

} // namespace pithward::demo
