#pragma once

#include "app/report/paper/document.h"
#include "libcore/specimen/outcome.h"

#include <string>

namespace pithward::report {

/// A finished document as a PDF of A4 pages: a list of contents with page numbers, tables that go on over pages under
/// their titles, pictures that stay with their captions, a number on each page. Needs no display and no application.
[[nodiscard]] Outcome<std::string> pdf_bytes_of(const Document& document);

} // namespace pithward::report
