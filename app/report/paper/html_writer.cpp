#include "app/report/paper/html_writer.h"

#include <QByteArray>
#include <QString>

namespace pithward::report {

namespace {

constexpr const char* html_style = R"(
:root { color-scheme: light; }
body { font: 15px/1.5 "Liberation Sans", "DejaVu Sans", Helvetica, Arial, sans-serif; color: #161a1d; background: #fff;
  max-width: 52rem; margin: 2.5rem auto; padding: 0 1.25rem; }
header { border-bottom: 1px solid #161a1d; margin-bottom: 1.5rem; padding-bottom: .75rem; }
h1 { font-size: 1.75rem; line-height: 1.2; margin: 0 0 .25rem; }
h2 { font-size: 1.3rem; margin: 2.25rem 0 .5rem; }
h3 { font-size: 1.05rem; margin: 1.75rem 0 .4rem; }
p { margin: .5rem 0; }
.subtitle { font-size: 1.05rem; color: #444a4f; }
.facts { color: #444a4f; font-size: .87rem; margin: .15rem 0; }
.caution { border-left: 3px solid #a83214; padding: .1rem 0 .1rem .75rem; }
nav ol { list-style: none; padding: 0; margin: .5rem 0; font-size: .93rem; }
nav li.below { padding-left: 1.5rem; }
nav a { color: inherit; text-decoration: none; }
nav a:hover, nav a:focus { text-decoration: underline; }
figure { margin: 1.25rem 0; }
figure img { display: block; width: 100%; height: auto; }
figcaption, caption { font-size: .87rem; color: #2c3236; text-align: left; }
figcaption { margin-top: .35rem; }
caption { caption-side: top; padding-bottom: .35rem; }
.number { font-weight: 600; }
.wide { overflow-x: auto; margin: 1.25rem 0; }
table { border-collapse: collapse; width: 100%; font-size: .83rem; line-height: 1.35;
  border-top: 1px solid #161a1d; border-bottom: 1px solid #161a1d; font-variant-numeric: tabular-nums; }
th, td { padding: .2rem .45rem; text-align: left; vertical-align: top; overflow-wrap: anywhere; }
thead th { border-bottom: 1px solid #6b7074; font-weight: 600; vertical-align: bottom; overflow-wrap: normal; }
tbody tr + tr > * { border-top: 1px solid #e6e8ea; }
tbody th { font-weight: 600; }
.n { text-align: right; overflow-wrap: normal; }
.note { font-size: .8rem; color: #444a4f; margin: .3rem 0 0; }
@page { size: A4; margin: 20mm; }
@media print {
  body { font-size: 9.5pt; max-width: none; margin: 0; padding: 0; }
  h2, h3 { break-after: avoid; }
  figure, tr { break-inside: avoid; }
  thead { display: table-header-group; }
  .wide { overflow: visible; }
}
)";

std::string escaped(const std::string& text) {
    std::string safe;
    safe.reserve(text.size());
    for (const char c : text) {
        switch (c) {
        case '&':
            safe += "&amp;";
            break;
        case '<':
            safe += "&lt;";
            break;
        case '>':
            safe += "&gt;";
            break;
        case '"':
            safe += "&quot;";
            break;
        case '\'':
            safe += "&#39;";
            break;
        default:
            safe += c;
        }
    }
    return safe;
}

std::string anchor_of(const Heading& heading) {
    return "s" + heading.number;
}

std::string label_of(const char* kind, int number) {
    return "<span class=\"number\">" + std::string(kind) + ' ' + std::to_string(number) + ".</span> ";
}

class HtmlBlocks {
public:
    explicit HtmlBlocks(std::string& out)
        : out_(out) {}

    void operator()(const Heading& heading) {
        const std::string tag = heading.level <= 1 ? "h2" : "h3";
        out_ += "<" + tag + " id=\"" + anchor_of(heading) + "\">" + heading.number + " <bdi>" + escaped(heading.text) +
                "</bdi></" + tag + ">\n";
    }
    void operator()(const Paragraph& paragraph) {
        out_ += paragraph.caution ? "<p class=\"caution\">" : "<p>";
        out_ += escaped(paragraph.text) + "</p>\n";
    }
    void operator()(const Bullets& bullets) {
        out_ += "<ul>\n";
        for (const std::string& item : bullets.items) {
            out_ += "<li>" + escaped(item) + "</li>\n";
        }
        out_ += "</ul>\n";
    }
    void operator()(const Table& table) {
        out_ += "<div class=\"wide\">\n<table>\n<caption>" + label_of("Table", table.number) + escaped(table.caption) +
                "</caption>\n";
        const bool titles = has_titles(table);
        if (titles) {
            out_ += "<thead><tr>";
            for (const Column& column : table.columns) {
                out_ += column.numbers ? "<th scope=\"col\" class=\"n\">" : "<th scope=\"col\">";
                out_ += escaped(column.title) + "</th>";
            }
            out_ += "</tr></thead>\n";
        }
        out_ += "<tbody>\n";
        for (const auto& row : table.rows) {
            add_row(table, row, titles);
        }
        out_ += "</tbody>\n</table>\n";
        if (!table.note.empty()) {
            out_ += "<p class=\"note\">" + escaped(table.note) + "</p>\n";
        }
        out_ += "</div>\n";
    }
    void operator()(const Figure& figure) {
        const QByteArray data =
            QByteArray::fromRawData(figure.bytes.data(), static_cast<qsizetype>(figure.bytes.size()));
        out_ += "<figure>\n<img alt=\"" + escaped(figure.alternative) + "\" src=\"data:" + escaped(figure.media) +
                ";base64," + data.toBase64().toStdString() + "\">\n<figcaption>" + label_of("Figure", figure.number) +
                escaped(figure.caption) + "</figcaption>\n</figure>\n";
    }

private:
    void add_row(const Table& table, const std::vector<std::string>& row, bool titles) {
        out_ += "<tr>";
        for (std::size_t i = 0; i < table.columns.size() && i < row.size(); ++i) {
            const bool names = i == 0 && !titles;
            out_ += names                      ? "<th scope=\"row\" dir=\"auto\">"
                    : table.columns[i].numbers ? "<td class=\"n\">"
                                               : "<td dir=\"auto\">";
            out_ += escaped(row[i]) + (names ? "</th>" : "</td>");
        }
        out_ += "</tr>\n";
    }

    std::string& out_;
};

void add_contents(std::string& out, const Document& document) {
    const int level = contents_level(document);
    if (level == 0) {
        return;
    }
    out += "<nav aria-label=\"Contents\">\n<ol>\n";
    for (const Block& block : document.blocks) {
        if (const auto* heading = std::get_if<Heading>(&block); heading != nullptr && heading->level <= level) {
            out += heading->level <= 1 ? "<li>" : "<li class=\"below\">";
            out += "<a href=\"#" + anchor_of(*heading) + "\">" + heading->number + " <bdi>" + escaped(heading->text) +
                   "</bdi></a></li>\n";
        }
    }
    out += "</ol>\n</nav>\n";
}

} // namespace

std::string html_bytes(const Document& document) {
    std::string out = "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                      "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
                      "<meta name=\"generator\" content=\"Pithward\">\n<title>";
    out += escaped(document.title) + "</title>\n<style>" + html_style + "</style>\n</head>\n<body>\n<header>\n<h1>" +
           escaped(document.title) + "</h1>\n<p class=\"subtitle\">" + escaped(document.subtitle) + "</p>\n";
    for (const std::string& fact : document.facts) {
        out += "<p class=\"facts\">" + escaped(fact) + "</p>\n";
    }
    out += "</header>\n";
    add_contents(out, document);
    out += "<main>\n";
    HtmlBlocks blocks(out);
    for (const Block& block : document.blocks) {
        std::visit(blocks, block);
    }
    return out + "</main>\n</body>\n</html>\n";
}

} // namespace pithward::report
