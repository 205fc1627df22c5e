#pragma once

#include "demo-scans/maker/scene.h"
#include "demo-scans/maker/write.h"

#include <optional>
#include <string>
#include <vector>

namespace pithward::demo {

/// A scan to be made: its name, what it shows, and the file it goes to.
struct Order {
    std::string name;
    std::string category;      ///< For the table of cases, e.g. "conifer-clear".
    std::vector<Scene> scenes; ///< One, or those of a tray.
    Format format = Format::Png;
};

/// Clear conifer cores: sound wood, clean sanding, each ring at least a quarter of a millimetre.
[[nodiscard]] Order clear_core(std::uint64_t seed, int number);

/// A wide spread of conditions, easy to hard. Of any wood, or of the one asked for.
[[nodiscard]] Order varied_core(std::uint64_t seed, int number, std::optional<WoodType> wood);

/// Cores that go past the pith, by a few rings or to the bark of the far side, of any wood, with some wear.
[[nodiscard]] Order past_pith_core(std::uint64_t seed, int number, std::optional<WoodType> wood);

} // namespace pithward::demo
