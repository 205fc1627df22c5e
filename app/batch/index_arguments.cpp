#include "app/batch/index_arguments.h"

#include <charconv>
#include <cmath>

namespace pithward::batch {

void add_index_arguments(CLI::App& parser, IndexArguments& arguments) {
    parser
        .add_option("--detrend", arguments.detrend,
                    "Trend to take off: mean, line, exponential or spline, with the spline's years as spline:32")
        ->capture_default_str();
    parser.add_option("--prewhiten", arguments.prewhiten, "Take off what the years before foretell")
        ->check(CLI::IsMember({"yes", "no"}))
        ->capture_default_str();
    parser.add_option("--index", arguments.index, "Width divided by the trend, or less the trend")
        ->check(CLI::IsMember({"ratio", "difference"}))
        ->capture_default_str();
    parser.add_flag("--log", arguments.logarithm, "Take logarithms of the widths first");
}

Outcome<dating::IndexOptions> index_options(const IndexArguments& arguments) {
    dating::IndexOptions options;
    const auto colon = arguments.detrend.find(':');
    const auto kind = dating::trend_kind_from(std::string_view(arguments.detrend).substr(0, colon));
    if (!kind) {
        return fail("--detrend", "there is no trend of the kind " + arguments.detrend.substr(0, 40),
                    "use mean, line, exponential, spline or spline:YEARS");
    }
    options.trend = *kind;
    if (colon != std::string::npos) {
        const char* begin = arguments.detrend.data() + colon + 1;
        const char* end = arguments.detrend.data() + arguments.detrend.size();
        const auto [stopped, error] = std::from_chars(begin, end, options.period);
        if (error != std::errc() || stopped != end || !std::isfinite(options.period)) {
            return fail("--detrend", "the years after the colon are no number", "write for instance spline:32");
        }
        if (*kind != dating::TrendKind::Spline) {
            return fail("--detrend", "only a spline takes years", "leave the number out, or use spline:YEARS");
        }
    }
    options.prewhiten = arguments.prewhiten == "yes";
    options.difference = arguments.index == "difference";
    options.logarithm = arguments.logarithm;
    if (const std::string wrong = options.validate(); !wrong.empty()) {
        return fail("--detrend", wrong, "write for instance spline:32");
    }
    return options;
}

} // namespace pithward::batch
