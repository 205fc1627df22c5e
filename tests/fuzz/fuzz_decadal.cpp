#include "libcore/formats/decadal.h"
#include "tests/fuzz/round_trip.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace pithward;
    static const fuzz::RoundTrip format{.read = read_decadal,
                                        .write = write_decadal,
                                        .keeps_comments = true,
                                        .rounding_mm = 0.0,
                                        .may_refuse_to_write = {"-9999 to 9998", "no room in six columns"}};
    return fuzz::check(format, data, size);
}
