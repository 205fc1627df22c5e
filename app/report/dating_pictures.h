#pragma once

#include "libcore/dating/chronology.h"
#include "libcore/dating/crossdate.h"
#include "libcore/results/climate_response.h"
#include "libcore/specimen/outcome.h"

#include <string>

namespace pithward::report {

/// Fails on a file whose ending is none of .svg, .png and .pdf.
[[nodiscard]] Outcome<void> check_picture_name(const std::string& file);

/// Pictures of what dating found, as the bytes of a file in the format of its ending. SVG and PNG are one sheet, PDF as
/// many pages as it takes. They need no display and no application. A PNG of more than 32,000 pixels a side is refused.
[[nodiscard]] Outcome<std::string> series_picture(const dating::CrossdateResult& result, const std::string& file);
[[nodiscard]] Outcome<std::string> agreement_picture(const dating::CrossdateResult& result, const std::string& file);
[[nodiscard]] Outcome<std::string> chronology_picture(const dating::Chronology& chronology, const std::string& file);
[[nodiscard]] Outcome<std::string> climate_picture(const results::ClimateResponse& response, const std::string& file);

} // namespace pithward::report
