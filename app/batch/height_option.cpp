#include "app/batch/height_option.h"

namespace pithward::batch {

void add_height_option(CLI::App& parser, HeightOption& option) {
    constexpr double most_years = 500.0;
    parser
        .add_option("--to-height", option,
                    "Years that trees took to grow up to where they were cored, and their standard deviation: 8,3")
        ->delimiter(',')
        ->expected(1, 2)
        ->check(CLI::Range(0.0, most_years));
}

std::optional<HeightAllowance> allowance_of(const HeightOption& option) {
    if (option.empty()) {
        return std::nullopt;
    }
    return HeightAllowance{option.front(), option.size() > 1 ? option[1] : 0.0};
}

} // namespace pithward::batch
