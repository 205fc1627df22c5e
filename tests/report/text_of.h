#pragma once

#include <optional>
#include <string>

namespace pithward::test {

/// The text of a PDF as another program reads it, page after page, each ended by a form feed; nothing where that
/// program (pdftotext of poppler-utils) is not on the machine.
[[nodiscard]] std::optional<std::string> text_of_pdf(const std::string& bytes);

/// The text of an HTML file without its tags and style, blanks and entities resolved.
[[nodiscard]] std::string text_of_html(const std::string& html);

/// A text without any blank, since lines are broken differently in different forms.
[[nodiscard]] std::string without_blanks(const std::string& text);

} // namespace pithward::test
