#include "app/report/paper/html_writer.h"

#include <gtest/gtest.h>

namespace pithward::report {
namespace {

const std::string hostile = R"(<script>alert("x")</script><img src=x onerror='y'>&amp;)";

/// A document each of whose texts is hostile.
Document hostile_document() {
    Document document{hostile, hostile, {hostile}, {}};
    document.blocks = {Heading{1, hostile},
                       Heading{2, hostile},
                       Paragraph{hostile, true},
                       Bullets{{hostile}},
                       Table{hostile, {{hostile}, {"b", 1.0, true}}, {{hostile, hostile}}, hostile},
                       Table{hostile, {{""}, {""}}, {{hostile, hostile}}},
                       Figure{hostile, hostile, "image/svg+xml", "<svg/>"}};
    return finished(document);
}

TEST(HtmlWriter, EveryTextIsEscaped) {
    const std::string html = html_bytes(hostile_document());
    EXPECT_EQ(html.find("<script"), std::string::npos);
    EXPECT_EQ(html.find("<img src"), std::string::npos);
    EXPECT_EQ(html.find("onerror='"), std::string::npos);
    EXPECT_NE(html.find("&lt;script&gt;alert(&quot;x&quot;)"), std::string::npos);
    EXPECT_NE(html.find("&amp;amp;"), std::string::npos);
}

TEST(HtmlWriter, NothingIsFetched) {
    const std::string html = html_bytes(hostile_document());
    for (const char* away : {"http", "src=\"/", "url(", "@import", "<link", "file:"}) {
        EXPECT_EQ(html.find(away), std::string::npos) << away;
    }
    EXPECT_NE(html.find("src=\"data:image/svg+xml;base64,PHN2Zy8+\""), std::string::npos);
}

TEST(HtmlWriter, EveryElementThatIsOpenedIsClosed) {
    const std::string html = html_bytes(hostile_document());
    const auto count = [&](const std::string& text) {
        std::size_t found = 0;
        for (std::size_t at = html.find(text); at != std::string::npos; at = html.find(text, at + 1)) {
            ++found;
        }
        return found;
    };
    for (const std::string tag : {"html", "head", "body", "header",  "nav",    "main",       "table", "thead", "tbody",
                                  "tr",   "td",   "th",   "caption", "figure", "figcaption", "ul",    "ol",    "li",
                                  "p",    "div",  "bdi",  "h1",      "h2",     "h3",         "style", "title"}) {
        EXPECT_EQ(count("<" + tag + ">") + count("<" + tag + " "), count("</" + tag + ">")) << tag;
    }
}

} // namespace
} // namespace pithward::report
