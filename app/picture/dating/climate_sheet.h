#pragma once

#include "app/picture/dating/sheet.h"
#include "libcore/results/climate_response.h"

namespace pithward::picture {

/// How a chronology goes with each window of months, as it is and with straight lines taken off, each with its 90 %
/// interval; and the strongest of them over stretches of years. Refers to `response`, which must outlive it.
[[nodiscard]] Sheet climate_sheet(const results::ClimateResponse& response);

} // namespace pithward::picture
