#include "libcore/formats/field_sheet.h"
#include "tests/fuzz/round_trip.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace pithward;
    if (size > fuzz::most_bytes) {
        return 0;
    }
    std::istringstream in(std::string(reinterpret_cast<const char*>(data), size));
    const auto sites = read_field_sheet(in);
    if (!sites) {
        fuzz::require(!sites.error().what.empty() && !sites.error().remedy.empty(), "a refusal without remedy");
        return 0;
    }
    std::ostringstream out;
    fuzz::require(write_field_sheet(out, *sites).has_value(), "what was read is refused");
    std::istringstream again(out.str());
    const auto back = read_field_sheet(again);
    fuzz::require(back.has_value(), "what was written is refused: " + (back ? "" : back.error().line()) + out.str());
    fuzz::require(*back == *sites, "other sites\n" + out.str());
    return 0;
}
