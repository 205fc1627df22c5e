#include "app/report/paper/page_flow.h"

#include <algorithm>

namespace pithward::report {

namespace {

/// The height of a piece with those that it must be kept with.
double kept_height(const std::vector<PagePiece>& pieces, std::size_t i) {
    double height = pieces[i].height;
    while (pieces[i].keep_next && i + 1 < pieces.size()) {
        ++i;
        height += pieces[i].before + pieces[i].height;
    }
    return height;
}

} // namespace

LaidPages lay_out(const std::vector<PagePiece>& pieces, double page_height) {
    LaidPages laid;
    laid.pages.emplace_back();
    double y = 0.0;
    bool held = false; // By the piece before it, whose page was chosen with this one in mind.
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const PagePiece& piece = pieces[i];
        const double needed = held ? piece.height : kept_height(pieces, i);
        if (const bool at_top = laid.pages.back().empty(); !at_top) {
            const bool fits = y + piece.before + needed <= page_height;
            const bool never_fits = needed > page_height && y + piece.before + piece.height <= page_height;
            if (fits || never_fits) {
                y += piece.before;
            } else {
                laid.pages.emplace_back();
                y = 0.0;
                if (piece.again) {
                    laid.pages.back().push_back({piece.again.get(), y});
                    y += piece.again->height;
                }
            }
        }
        if (piece.heading >= 0) {
            const auto index = static_cast<std::size_t>(piece.heading);
            laid.heading_pages.resize(std::max(laid.heading_pages.size(), index + 1));
            laid.heading_pages[index] = static_cast<int>(laid.pages.size());
        }
        laid.pages.back().push_back({&piece, y});
        y += piece.height;
        held = piece.keep_next;
    }
    return laid;
}

} // namespace pithward::report
