#pragma once

#include <QPainter>
#include <QString>
#include <functional>
#include <vector>

namespace pithward::picture {

/// A picture of rows below each other that share one axis, to be put on one long sheet or on pages. Lengths in points
/// (1/72 inch).
struct Sheet {
    QString title;
    double width = 0.0;
    double head = 0.0;        ///< Height of what stands above the rows of each page.
    std::vector<double> rows; ///< Heights.
    std::function<void(QPainter&, const QRectF&)> paint_head;
    std::function<void(QPainter&, const QRectF&, std::size_t)> paint_row;

    [[nodiscard]] double height() const;
};

/// Some rows of a sheet, as a page shows them.
struct SheetPage {
    std::size_t first = 0;
    std::size_t end = 0;
    double height = 0.0; ///< With the head.
};

/// The rows shared out among pages no higher than this; a row that is higher has a page of its own. A sheet without
/// rows is one page.
[[nodiscard]] std::vector<SheetPage> pages_of(const Sheet& sheet, double greatest_height);

/// Paints a page with its upper left corner at the painter's origin.
void paint_page(QPainter& painter, const Sheet& sheet, const SheetPage& page);

} // namespace pithward::picture
