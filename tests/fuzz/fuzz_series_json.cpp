#include "libcore/formats/series_json.h"
#include "tests/fuzz/round_trip.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace pithward;
    static const fuzz::RoundTrip format{.read = read_series_json,
                                        .write = write_series_json,
                                        .keeps_comments = true,
                                        .rounding_mm = 0.0000501,
                                        .may_refuse_to_write = {"under 0.0005 mm"}};
    return fuzz::check(format, data, size);
}
