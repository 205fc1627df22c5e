#pragma once

#include <string>
#include <variant>
#include <vector>

namespace pithward::report {

/// A document as plain data: what it says, and nothing of how it looks. The writers (html_writer.h, pdf_writer.h) give
/// it a form; both show the same content.

struct Heading {
    int level = 1; ///< 1 or 2.
    std::string text;
    std::string number = {}; ///< "4.2", given by `finished`.
};

struct Paragraph {
    std::string text;
    bool caution = false; ///< Set apart, since a reader must not miss it.
};

struct Bullets {
    std::vector<std::string> items;
};

struct Column {
    std::string title;
    double share = 1.0; ///< Of the breadth, against the other columns' shares.
    bool numbers = false;
};

struct Table {
    std::string caption;
    std::vector<Column> columns;                ///< Without titles: the first column names what the others tell.
    std::vector<std::vector<std::string>> rows; ///< One cell for each column.
    std::string note = {};                      ///< Below it; may be empty.
    int number = 0;                             ///< Given by `finished`.
};

struct Figure {
    std::string caption;
    std::string alternative; ///< What it shows, for those who can't see it.
    std::string media;       ///< "image/svg+xml" or "image/jpeg".
    std::string bytes;       ///< Of the picture's file.
    int number = 0;          ///< Given by `finished`.
};

using Block = std::variant<Heading, Paragraph, Bullets, Table, Figure>;

struct Document {
    std::string title;
    std::string subtitle;
    std::vector<std::string> facts; ///< Lines below the title: the file, the program, the date.
    std::vector<Block> blocks;
    bool contents = true; ///< A list of the headings goes before all.
};

/// The document with headings, tables and figures numbered in their order, and with all its texts made fit to be
/// shown: what is no UTF-8, control characters and marks that turn the direction of what follows are taken out or
/// replaced, and what is too long to be read in its place is cut, with an ellipsis (cells after 500 characters, other
/// texts after 4,000).
[[nodiscard]] Document finished(Document document);

/// A text so made fit.
[[nodiscard]] std::string fit_text(const std::string& text, std::size_t most_characters);

/// Down to which level headings stand in the contents: 2, 1 where that would fill pages, 0 where there are none.
[[nodiscard]] int contents_level(const Document& document);

/// Whether a table has a row of titles.
[[nodiscard]] bool has_titles(const Table& table);

} // namespace pithward::report
