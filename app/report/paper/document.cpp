#include "app/report/paper/document.h"

#include <QString>
#include <algorithm>

namespace pithward::report {

namespace {

constexpr std::size_t longest_text = 4'000;
constexpr std::size_t longest_cell = 500;

/// What turns the direction of the text after it, or stands for nothing that can be seen.
bool is_unwanted(QChar c) {
    const char16_t code = c.unicode();
    const bool control = code < 0x20 || (code >= 0x7f && code < 0xa0);
    const bool turns = (code >= 0x202a && code <= 0x202e) || (code >= 0x2066 && code <= 0x2069);
    const bool no_character = code >= 0xfffe || (code >= 0xfdd0 && code <= 0xfdef);
    return control || turns || no_character;
}

void fit(std::string& text, std::size_t most) {
    text = fit_text(text, most);
}

class Finisher {
public:
    void operator()(Heading& heading) {
        fit(heading.text, longest_cell);
        if (heading.level <= 1) {
            ++section_;
            below_ = 0;
            heading.number = std::to_string(section_);
        } else {
            ++below_;
            heading.number = std::to_string(section_) + '.' + std::to_string(below_);
        }
    }
    void operator()(Paragraph& paragraph) { fit(paragraph.text, longest_text); }
    void operator()(Bullets& bullets) {
        for (std::string& item : bullets.items) {
            fit(item, longest_text);
        }
    }
    void operator()(Table& table) {
        table.number = ++tables_;
        fit(table.caption, longest_text);
        fit(table.note, longest_text);
        for (std::vector<std::string>& row : table.rows) {
            row.resize(table.columns.size());
            for (std::string& cell : row) {
                fit(cell, longest_cell);
            }
        }
    }
    void operator()(Figure& figure) {
        figure.number = ++figures_;
        fit(figure.caption, longest_text);
        fit(figure.alternative, longest_cell);
    }

private:
    int section_ = 0;
    int below_ = 0;
    int tables_ = 0;
    int figures_ = 0;
};

} // namespace

std::string fit_text(const std::string& text, std::size_t most_characters) {
    // No character has more than four bytes: what is far too long is not looked at whole.
    const std::size_t looked_at = std::min(text.size(), 4 * most_characters + 4);
    const QString whole = QString::fromUtf8(text.data(), static_cast<qsizetype>(looked_at));
    QString fitting;
    fitting.reserve(whole.size());
    for (const QChar c : whole) {
        const bool blank = c == u'\n' || c == u'\t' || c == u'\r';
        if (blank || !is_unwanted(c)) {
            fitting += blank ? QChar(u' ') : c;
        }
    }
    const auto most = static_cast<qsizetype>(most_characters);
    if (fitting.size() > most || looked_at < text.size()) {
        fitting.truncate(most - 1);
        if (!fitting.isEmpty() && fitting.back().isHighSurrogate()) {
            fitting.chop(1);
        }
        fitting += QChar(0x2026);
    }
    return fitting.toStdString();
}

int contents_level(const Document& document) {
    if (!document.contents) {
        return 0;
    }
    constexpr int most_lines = 60;
    const auto headings = std::ranges::count_if(
        document.blocks, [](const Block& block) { return std::holds_alternative<Heading>(block); });
    return headings <= most_lines ? 2 : 1;
}

bool has_titles(const Table& table) {
    return std::ranges::any_of(table.columns, [](const Column& column) { return !column.title.empty(); });
}

Document finished(Document document) {
    fit(document.title, longest_cell);
    fit(document.subtitle, longest_text);
    for (std::string& fact : document.facts) {
        fit(fact, longest_text);
    }
    Finisher finisher;
    for (Block& block : document.blocks) {
        std::visit(finisher, block);
    }
    return document;
}

} // namespace pithward::report
