#pragma once

#include "app/report/paper/document.h"
#include "app/report/paper/page_flow.h"

#include <vector>

namespace pithward::report {

/// The size of a page's text, in tenths of a point.
struct PageSize {
    double breadth = 0.0;
    double height = 0.0;
};

/// A block of a document as pieces of a page, to be put below what is there.
void add_heading_pieces(std::vector<PagePiece>& pieces, const Heading& heading, int index, const PageSize& page);
void add_paragraph_pieces(std::vector<PagePiece>& pieces, const Paragraph& paragraph, const PageSize& page);
void add_bullet_pieces(std::vector<PagePiece>& pieces, const Bullets& bullets, const PageSize& page);
void add_table_pieces(std::vector<PagePiece>& pieces, const Table& table, const PageSize& page);
void add_figure_pieces(std::vector<PagePiece>& pieces, const Figure& figure, const PageSize& page);

} // namespace pithward::report
