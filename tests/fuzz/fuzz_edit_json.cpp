#include "libcore/edit/apply.h"
#include "libcore/edit/edit_json.h"
#include "libcore/edit/touched.h"
#include "tests/fuzz/round_trip.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace pithward;
    if (size > fuzz::most_bytes) {
        return 0;
    }
    const auto edit = edit_from_json({reinterpret_cast<const char*>(data), size});
    if (!edit) {
        fuzz::require(!edit.error().what.empty() && !edit.error().remedy.empty(), "a refusal without remedy");
        return 0;
    }
    const auto text = edit_to_json(*edit);
    fuzz::require(text.has_value(), "what was read is refused");
    const auto back = edit_from_json(*text);
    fuzz::require(back.has_value() && *back == *edit, "another edit\n" + *text);
    fuzz::require(inverse(inverse(*edit)) == *edit, "the inverse of the inverse is another edit");
    (void)touched(*edit);
    if (const auto after = apply(Reading{}, *edit)) {
        const auto undone = apply(*after, inverse(*edit));
        fuzz::require(undone.has_value() && *undone == Reading{}, "the inverse does not take it back\n" + *text);
    }
    return 0;
}
