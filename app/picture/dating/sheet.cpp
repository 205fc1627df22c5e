#include "app/picture/dating/sheet.h"

#include <numeric>

namespace pithward::picture {

double Sheet::height() const {
    return std::accumulate(rows.begin(), rows.end(), head);
}

std::vector<SheetPage> pages_of(const Sheet& sheet, double greatest_height) {
    std::vector<SheetPage> pages{{0, 0, sheet.head}};
    for (std::size_t row = 0; row < sheet.rows.size(); ++row) {
        SheetPage* page = &pages.back();
        if (page->end > page->first && page->height + sheet.rows[row] > greatest_height) {
            page = &pages.emplace_back(SheetPage{row, row, sheet.head});
        }
        page->end = row + 1;
        page->height += sheet.rows[row];
    }
    return pages;
}

void paint_page(QPainter& painter, const Sheet& sheet, const SheetPage& page) {
    sheet.paint_head(painter, {0.0, 0.0, sheet.width, sheet.head});
    double top = sheet.head;
    for (std::size_t row = page.first; row < page.end; ++row) {
        sheet.paint_row(painter, {0.0, top, sheet.width, sheet.rows[row]}, row);
        top += sheet.rows[row];
    }
}

} // namespace pithward::picture
