#include "libcore/field/height_allowance.h"

#include <charconv>

namespace pithward::field {

namespace {

constexpr double most_years = 500.0;

std::optional<double> years_in(const Core& core, const char* column) {
    const auto found = core.others.find(column);
    if (found == core.others.end()) {
        return std::nullopt;
    }
    const std::string& text = found->second;
    double value = 0.0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    const bool sound = error == std::errc() && end == text.data() + text.size() && value >= 0.0 && value <= most_years;
    return sound ? std::optional(value) : std::nullopt;
}

} // namespace

std::optional<HeightAllowance> height_allowance(const Core& core, const std::optional<HeightAllowance>& given) {
    const auto years = years_in(core, "years_to_core_height");
    return years ? std::optional(HeightAllowance{*years, years_in(core, "years_to_core_height_sd").value_or(0.0)})
                 : given;
}

} // namespace pithward::field
