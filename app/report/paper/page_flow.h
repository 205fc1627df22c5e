#pragma once

#include <QPainter>
#include <functional>
#include <memory>
#include <vector>

namespace pithward::report {

/// A piece of a page as broad as the text: a line, a row of a table, a picture. Lengths in tenths of a point.
struct PagePiece {
    double height = 0.0;
    double before = 0.0;                           ///< Room above it, but at the top of a page.
    bool keep_next = false;                        ///< The next piece stands on the same page.
    std::function<void(QPainter&, QPointF)> paint; ///< With its upper left corner there; may be empty.
    /// What a page that begins with this piece shows above it: the titles of a table.
    std::shared_ptr<const PagePiece> again = {};
    int heading = -1; ///< Which heading it is, counted from 0; -1: none.
};

/// A piece put on a page.
struct PlacedPiece {
    const PagePiece* piece = nullptr; ///< Into what was given.
    double top = 0.0;                 ///< Below the page's upper margin.
};

struct LaidPages {
    std::vector<std::vector<PlacedPiece>> pages;
    std::vector<int> heading_pages; ///< Counted from 1.
};

/// Shares pieces out among pages of this height. Pieces that are kept together go to the next page together, where they
/// fit one page. A piece that is higher than a page has one of its own. Refers to `pieces`.
[[nodiscard]] LaidPages lay_out(const std::vector<PagePiece>& pieces, double page_height);

} // namespace pithward::report
