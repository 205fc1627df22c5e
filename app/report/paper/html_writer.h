#pragma once

#include "app/report/paper/document.h"

#include <string>

namespace pithward::report {

/// A finished document as one HTML file that needs nothing else: pictures stand in it as data, nothing is fetched and
/// nothing runs. Every text is escaped. It prints like the PDF.
[[nodiscard]] std::string html_bytes(const Document& document);

} // namespace pithward::report
