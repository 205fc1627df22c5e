#include "app/report/labels/label_sheet.h"

#include "app/report/labels/code_picture.h"
#include "app/report/labels/fitted_text.h"
#include "app/report/labels/printed_pages.h"
#include "app/report/offscreen_gui.h"
#include "app/report/paper/document.h"

#include <QPainterPath>
#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace pithward::report {

namespace {

constexpr std::size_t labels_across = 3;
constexpr std::size_t labels_down = 8;
static_assert(labels_across * labels_down == labels_a_page);
constexpr std::size_t most_labels = 20'000;
constexpr std::size_t name_letters_in_fault = 60;

// A label, in page units. The edge is left free, because many printers can't print there.
constexpr double label_breadth = paper_short_mm / labels_across * page_mm;
constexpr double label_height = paper_long_mm / labels_down * page_mm;
constexpr double label_edge = 5.0 * page_mm;
constexpr double code_breadth = label_height - 2.0 * label_edge;
constexpr double words_left = label_edge + code_breadth + 1.5 * page_mm;
constexpr double words_breadth = label_breadth - words_left - label_edge;

/// All dark squares as one shape: no light lines between them, however it is printed.
void paint_code(QPainter& painter, QPointF at, const CodePicture& code) {
    const double square = std::floor(code_breadth / (code.side + 2 * code_rim));
    const double start = 0.5 * (code_breadth - square * code.side);
    QPainterPath shape;
    shape.setFillRule(Qt::WindingFill);
    for (int y = 0; y < code.side; ++y) {
        for (int x = 0; x < code.side;) {
            int end = x;
            while (end < code.side && code.is_dark(end, y)) {
                ++end;
            }
            if (end > x) {
                shape.addRect(start + square * x, start + square * y, square * (end - x), square);
            }
            x = end + 1;
        }
    }
    painter.fillPath(shape.translated(at), Qt::black);
}

void paint_words(QPainter& painter, QPointF at, const formats::SheetRow& core) {
    constexpr double name_height = 10.0 * page_mm;
    constexpr double line_height = 4.2 * page_mm;
    constexpr double title_breadth = 7.5 * page_mm;
    constexpr LetterSizes name_letters{22.0, 8.0, true};
    constexpr LetterSizes title_letters{6.0, 5.0, false};
    constexpr LetterSizes word_letters{9.0, 6.5, false};
    const QPointF corner = at + QPointF(words_left, label_edge);
    paint_fitted(painter, {corner, QSizeF(words_breadth, name_height)}, core.core.id, name_letters, Qt::black);
    const std::array<std::pair<const char*, const std::string*>, 4> lines{{{"site", &core.site.id},
                                                                           {"tree", &core.tree.id},
                                                                           {"species", &core.tree.species},
                                                                           {"date", &core.core.date_cored}}};
    double y = name_height;
    for (const auto& [title, words] : lines) {
        if (words->empty()) {
            continue;
        }
        const QPointF left = corner + QPointF(0.0, y);
        const double title_room = title_breadth + 0.8 * page_mm;
        paint_fitted(painter, {left, QSizeF(title_breadth, line_height)}, title, title_letters, page_soft_ink);
        paint_fitted(painter, {left + QPointF(title_room, 0.0), QSizeF(words_breadth - title_room, line_height)},
                     *words, word_letters, Qt::black);
        y += line_height;
    }
}

/// Faint lines to cut along, between labels only.
void paint_cuts(QPainter& painter) {
    painter.setPen(QPen(QColor(0xc0, 0xc0, 0xc0), 0.3 * page_unit));
    for (std::size_t k = 1; k < labels_across; ++k) {
        const double x = label_breadth * static_cast<double>(k);
        painter.drawLine(QPointF(x, 0.0), QPointF(x, paper_long_mm * page_mm));
    }
    for (std::size_t k = 1; k < labels_down; ++k) {
        const double y = label_height * static_cast<double>(k);
        painter.drawLine(QPointF(0.0, y), QPointF(paper_short_mm * page_mm, y));
    }
}

} // namespace

Outcome<LabelSheet> label_sheet(std::span<const formats::SheetRow> cores, std::size_t from_label) {
    if (cores.empty() || cores.size() > most_labels) {
        return fail("", cores.empty() ? "there is no core to make a label for" : "these are more than 20,000 labels",
                    cores.empty() ? "give a field sheet or a project with cores" : "make them in several parts");
    }
    if (from_label < 1 || from_label > labels_a_page) {
        return fail("", "a page has no label " + std::to_string(from_label),
                    "give 1 to 24, counted row by row from the upper left");
    }
    const OffscreenGui gui;
    const std::size_t used = from_label - 1; // places of the first page that stay empty
    LabelSheet sheet;
    const auto paint = [&](QPainter& painter, std::size_t page) {
        paint_cuts(painter);
        const std::size_t first = page * labels_a_page;
        for (std::size_t k = first < used ? 0 : first - used; k < std::min(cores.size(), first + labels_a_page - used);
             ++k) {
            const std::size_t place = k + used - first;
            const std::size_t down = place / labels_across;
            const QPointF at(label_breadth * static_cast<double>(place % labels_across),
                             label_height * static_cast<double>(down));
            paint_words(painter, at, cores[k]);
            const QPointF code_at = at + QPointF(label_edge, label_edge);
            if (const auto code = code_of(code_text(cores[k].site, cores[k].core)); code) {
                paint_code(painter, code_at, *code);
            } else {
                sheet.without_code.push_back({fit_text(cores[k].core.id, name_letters_in_fault),
                                              "its label has no code: " + code.error().what, code.error().remedy});
                paint_fitted(painter, {code_at, QSizeF(code_breadth, code_breadth)}, "no code", {9.0, 9.0, false},
                             page_soft_ink, Qt::AlignHCenter);
            }
        }
    };
    const std::size_t pages = (cores.size() + used + labels_a_page - 1) / labels_a_page;
    auto pdf = printed_pages("Labels", PaperTurn::Upright, pages, paint);
    if (!pdf) {
        return tl::unexpected(std::move(pdf.error()));
    }
    sheet.pdf = std::move(*pdf);
    return sheet;
}

} // namespace pithward::report
