#include "app/report/labels/field_form.h"

#include "app/report/labels/fitted_text.h"
#include "app/report/labels/printed_pages.h"
#include "app/report/offscreen_gui.h"

#include <QFontMetricsF>
#include <array>
#include <string_view>
#include <vector>

namespace pithward::report {

namespace {

constexpr std::size_t most_form_cores = 20'000;
constexpr std::size_t least_empty_rows = 5;

/// A column of the form: the field sheet's column that it is copied into, and its titles.
struct FormColumn {
    std::string_view name;
    const char* title;
    const char* second; ///< Unit, or the title's second line.
    double breadth_mm;
};

constexpr std::array<FormColumn, 15> form_columns{{
    {"tree", "tree", "", 19.0},
    {"core", "core", "", 22.0},
    {"species", "species", "", 28.0},
    {"date_cored", "date", "", 20.0},
    {"dbh_cm", "dbh", "cm", 13.0},
    {"bark_mm", "bark", "mm", 12.0},
    {"core_height_cm", "height", "cm", 13.0},
    {"azimuth_deg", "azimuth", "\xC2\xB0", 14.0},
    {"lean_azimuth_deg", "lean", "azimuth \xC2\xB0", 15.0},
    {"lean_deg", "lean", "\xC2\xB0", 12.0},
    {"slope_aspect_deg", "slope", "aspect \xC2\xB0", 14.0},
    {"outer", "outer", "", 20.0},
    {"pith", "pith", "", 16.0},
    {"pieces", "pieces", "", 12.0},
    {"notes", "notes", "", 47.0},
}};

// The page, in page units.
constexpr double form_edge = 10.0 * page_mm;
constexpr double form_breadth = (paper_long_mm - 20.0) * page_mm;
constexpr std::size_t form_rows = 18;
constexpr double form_row = 9.0 * page_mm;
constexpr double form_head = 9.0 * page_mm; ///< The line above the table.
constexpr double form_titles = 8.0 * page_mm;

/// Rows of one site on one page; fewer than there are lines, the others stay empty.
struct FormPage {
    std::string site;
    std::span<const formats::SheetRow> cores;
};

std::vector<FormPage> form_pages(std::span<const formats::SheetRow> cores) {
    std::vector<FormPage> pages;
    for (std::size_t k = 0; k < cores.size();) {
        const std::string& site = cores[k].site.id;
        std::size_t end = k;
        while (end < cores.size() && end - k < form_rows && cores[end].site.id == site) {
            ++end;
        }
        pages.push_back({site, cores.subspan(k, end - k)});
        const bool last_of_site = end == cores.size() || cores[end].site.id != site;
        if (last_of_site && form_rows - (end - k) < least_empty_rows) {
            pages.push_back({site, {}});
        }
        k = end;
    }
    if (pages.empty()) {
        pages.push_back({});
    }
    return pages;
}

/// What is filled in; "unknown" is left to the pencil.
std::string known_cell(const formats::SheetRow& core, std::string_view name) {
    for (const formats::SheetColumn& column : formats::sheet_columns()) {
        if (column.name == name) {
            const std::string text = column.get(core);
            return text == "unknown" ? std::string() : text;
        }
    }
    return {};
}

/// A title with a line after it to write on.
void paint_blank(QPainter& painter, double x, double breadth, const char* title, const std::string& known) {
    constexpr LetterSizes title_size{8.0, 8.0, false};
    constexpr LetterSizes known_size{11.0, 6.0, true};
    const FittedText words = fitted(title, breadth, title_size);
    const double room = QFontMetricsF(words.font).horizontalAdvance(words.text) + 2.0 * page_mm;
    const double upper = form_edge;
    const double height = form_head - 2.0 * page_mm;
    paint_fitted(painter, {x, upper, room, height}, title, title_size, page_soft_ink);
    painter.setPen(QPen(page_soft_ink, 0.5 * page_unit));
    painter.drawLine(QPointF(x + room, upper + height), QPointF(x + breadth - 4.0 * page_mm, upper + height));
    paint_fitted(painter, {x + room, upper, breadth - room - 4.0 * page_mm, height}, known, known_size, Qt::black);
}

void paint_form_head(QPainter& painter, const FormPage& page, std::size_t number, std::size_t pages) {
    constexpr double site_breadth = 80.0 * page_mm;
    constexpr double other_breadth = 58.0 * page_mm;
    paint_blank(painter, form_edge, site_breadth, "site", page.site);
    paint_blank(painter, form_edge + site_breadth, other_breadth, "collector", {});
    paint_blank(painter, form_edge + site_breadth + other_breadth, other_breadth, "borer mm", {});
    paint_blank(painter, form_edge + site_breadth + 2.0 * other_breadth, other_breadth, "elevation m", {});
    paint_fitted(painter,
                 {form_edge + form_breadth - 23.0 * page_mm, form_edge, 23.0 * page_mm, form_head - 2.0 * page_mm},
                 "page " + std::to_string(number) + " of " + std::to_string(pages), {8.0, 6.0, false}, page_soft_ink,
                 Qt::AlignRight);
}

void paint_form_grid(QPainter& painter) {
    const double top = form_edge + form_head;
    const double bottom = top + form_titles + form_row * static_cast<double>(form_rows);
    painter.setPen(QPen(page_soft_ink, 0.5 * page_unit));
    for (std::size_t k = 0; k <= form_rows; ++k) {
        const double y = top + form_titles + form_row * static_cast<double>(k);
        painter.drawLine(QPointF(form_edge, y), QPointF(form_edge + form_breadth, y));
    }
    painter.drawLine(QPointF(form_edge, top), QPointF(form_edge + form_breadth, top));
    double x = form_edge;
    painter.drawLine(QPointF(x, top), QPointF(x, bottom));
    for (const FormColumn& column : form_columns) {
        const double breadth = column.breadth_mm * page_mm;
        const double half = 0.5 * form_titles;
        paint_fitted(painter, {x, top, breadth, half}, column.title, {8.0, 5.0, true}, page_ink, Qt::AlignHCenter);
        paint_fitted(painter, {x, top + half, breadth, half}, column.second, {8.0, 5.0, false}, page_soft_ink,
                     Qt::AlignHCenter);
        x += breadth;
        painter.setPen(QPen(page_soft_ink, 0.5 * page_unit));
        painter.drawLine(QPointF(x, top), QPointF(x, bottom));
    }
}

void paint_form_cells(QPainter& painter, std::span<const formats::SheetRow> cores) {
    double y = form_edge + form_head + form_titles;
    for (const formats::SheetRow& core : cores) {
        double x = form_edge;
        for (const FormColumn& column : form_columns) {
            const double breadth = column.breadth_mm * page_mm;
            paint_fitted(painter, {x + page_mm, y, breadth - 2.0 * page_mm, form_row}, known_cell(core, column.name),
                         {9.0, 6.5, false}, Qt::black);
            x += breadth;
        }
        y += form_row;
    }
}

void paint_form_hints(QPainter& painter) {
    constexpr double line = 3.6 * page_mm;
    const std::array<const char*, 2> hints{
        "azimuth: compass degrees of the side that the borer entered; lean azimuth: of the way the stem leans; slope "
        "aspect: of the way the ground falls. Lean 0: the stem stands upright. Height: of the core above the ground.",
        "outer: complete, unfinished (cored while it grew), lost or unknown. pith: reached, near, missed or unknown. "
        "pieces: how many the core came out in. dbh: diameter at breast height. Dates: 2024-06-30."};
    double y = paper_short_mm * page_mm - form_edge - 2.0 * line;
    for (const char* hint : hints) {
        paint_fitted(painter, {form_edge, y, form_breadth, line}, hint, {7.5, 5.0, false}, page_soft_ink);
        y += line;
    }
}

} // namespace

Outcome<std::string> field_form(std::span<const formats::SheetRow> cores) {
    if (cores.size() > most_form_cores) {
        return fail("", "these are more than 20,000 rows for a field sheet", "print it in several parts");
    }
    const OffscreenGui gui;
    const std::vector<FormPage> pages = form_pages(cores);
    return printed_pages("Field sheet", PaperTurn::Sideways, pages.size(), [&](QPainter& painter, std::size_t page) {
        paint_form_head(painter, pages[page], page + 1, pages.size());
        paint_form_grid(painter);
        paint_form_cells(painter, pages[page].cores);
        paint_form_hints(painter);
    });
}

} // namespace pithward::report
