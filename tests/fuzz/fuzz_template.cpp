#include "libcore/formats/archive_template.h"
#include "tests/fuzz/round_trip.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace pithward;
    static const fuzz::RoundTrip format{.read = read_archive_template,
                                        .write = write_archive_template,
                                        .keeps_outer_gaps = false,
                                        .rounding_mm = 0.000501,
                                        .may_refuse_to_write = {"under 0.0005 mm"}};
    return fuzz::check(format, data, size);
}
