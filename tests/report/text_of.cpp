#include "tests/report/text_of.h"

#include "tests/support/temporary_folder.h"

#include <cstdlib>
#include <regex>

namespace pithward::test {

std::optional<std::string> text_of_pdf(const std::string& bytes) {
    if (std::system("command -v pdftotext > /dev/null") != 0) {
        return std::nullopt;
    }
    const TemporaryFolder folder;
    const std::string pdf = folder.write("a.pdf", bytes);
    const std::string text = folder.file("a.txt");
    if (std::system(("pdftotext -layout '" + pdf + "' '" + text + "'").c_str()) != 0) {
        return std::nullopt;
    }
    return bytes_of(text);
}

std::string text_of_html(const std::string& html) {
    std::string text;
    bool in_tag = false;
    const std::size_t body = html.find("<body>");
    for (const char c : html.substr(body == std::string::npos ? 0 : body)) {
        in_tag = c == '<' || in_tag;
        text += in_tag ? ' ' : c;
        in_tag = in_tag && c != '>';
    }
    const std::pair<const char*, const char*> entities[] = {
        {"&lt;", "<"}, {"&gt;", ">"}, {"&quot;", "\""}, {"&#39;", "'"}, {"&amp;", "&"}};
    for (const auto& [name, letter] : entities) {
        text = std::regex_replace(text, std::regex(name), letter);
    }
    return text;
}

std::string without_blanks(const std::string& text) {
    std::string dense;
    for (const char c : text) {
        if (c != ' ' && c != '\n' && c != '\f' && c != '\t' && c != '\r') {
            dense += c;
        }
    }
    return dense;
}

} // namespace pithward::test
