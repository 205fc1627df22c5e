#include "libimaging/calibrate/graduation.h"

#include <algorithm>

namespace pithward {

int GraduationKind::rank(int number) const {
    return static_cast<int>(std::ranges::count_if(longer_at_each, [&](int each) { return number % each == 0; }));
}

std::span<const GraduationKind> graduation_kinds() {
    static const std::vector<GraduationKind> kinds{
        {Graduation::Millimetre, "1mm", Millimetres(1.0), {5, 10}},
        {Graduation::HalfMillimetre, "0.5mm", Millimetres(0.5), {2, 10, 20}},
        {Graduation::SixteenthInch, "1/16in", Millimetres(25.4 / 16.0), {2, 4, 8, 16}},
    };
    return kinds;
}

const GraduationKind& kind_of(Graduation graduation) {
    const auto kinds = graduation_kinds();
    return *std::ranges::find(kinds, graduation, &GraduationKind::graduation);
}

std::optional<Graduation> graduation_from(std::string_view word) {
    const auto kinds = graduation_kinds();
    const auto found = std::ranges::find(kinds, word, &GraduationKind::word);
    return found == kinds.end() ? std::nullopt : std::optional(found->graduation);
}

} // namespace pithward
