#include "libcore/formats/series_csv.h"
#include "tests/fuzz/round_trip.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace pithward;
    static const fuzz::RoundTrip format{.read = read_series_csv,
                                        .write = write_series_csv,
                                        .keeps_outer_gaps = false,
                                        .keeps_headers = false,
                                        .rounding_mm = 0.000501,
                                        .may_refuse_to_write = {"under 0.0005 mm"}};
    return fuzz::check(format, data, size);
}
