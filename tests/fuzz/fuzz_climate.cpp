#include "libcore/formats/climate_csv.h"
#include "libcore/results/climate_windows.h"

#include <cstdint>
#include <cstdlib>
#include <sstream>
#include <string>

/// What is read can be worked with: years are bounded, and windows have means or none.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace pithward;
    std::istringstream in(std::string(data, data + size));
    const auto climate = read_climate_csv(in);
    if (!climate) {
        if (climate.error().what.empty() || climate.error().remedy.empty()) {
            std::abort();
        }
        return 0;
    }
    const auto means = results::window_means(*climate, {11, 13});
    if (climate->empty() || means.size() < 3 || means.size() > 40'010) {
        std::abort();
    }
    return 0;
}
