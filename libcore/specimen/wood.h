#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace pithward {

/// The three kinds of wood by which ring boundaries look different.
enum class WoodType { Conifer, RingPorous, DiffusePorous };

inline constexpr std::array all_wood_types{WoodType::Conifer, WoodType::RingPorous, WoodType::DiffusePorous};

/// The wood under the bark at the outer end of a core.
enum class OuterWood { Complete, Unfinished, Lost, Unknown };

/// Words as in the design: "conifer", "ring-porous", "diffuse-porous"; "complete", "unfinished", "lost", "unknown".
[[nodiscard]] std::string word(WoodType wood);
[[nodiscard]] std::string word(OuterWood outer);
[[nodiscard]] std::optional<WoodType> wood_type_from(std::string_view word);
[[nodiscard]] std::optional<OuterWood> outer_wood_from(std::string_view word);

} // namespace pithward
