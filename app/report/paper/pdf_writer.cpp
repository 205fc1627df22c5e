#include "app/report/paper/pdf_writer.h"

#include "app/report/offscreen_gui.h"
#include "app/report/paper/page_pieces.h"
#include "app/report/paper/page_text.h"

#include <QBuffer>
#include <QPdfWriter>
#include <utility>

namespace pithward::report {

namespace {

// A4, in points (ISO 216: 210 mm by 297 mm).
constexpr double paper_breadth = 595.28 * page_unit;
constexpr double paper_height = 841.89 * page_unit;
constexpr double side_margin = 56.7 * page_unit; ///< 20 mm.
constexpr double upper_margin = 56.7 * page_unit;
constexpr double lower_margin = 62.0 * page_unit;

using HeadingPages = std::shared_ptr<std::vector<int>>;

/// Title, subtitle and facts.
void add_title(std::vector<PagePiece>& pieces, const Document& document, const PageSize& page) {
    const auto add = [&](const std::string& text, double points, bool bold, double before, const QColor& ink) {
        const PageText words(QString::fromStdString(text), page_font(points, bold), page.breadth);
        PagePiece piece;
        piece.height = words.height();
        piece.before = before * page_unit;
        piece.paint = [words, ink](QPainter& painter, QPointF at) { words.paint(painter, at, ink); };
        pieces.push_back(std::move(piece));
    };
    add(document.title, 19.0, true, 0.0, page_ink);
    add(document.subtitle, 10.5, false, 3.0, page_soft_ink);
    for (const std::string& fact : document.facts) {
        add(fact, 8.0, false, 3.0, page_soft_ink);
    }
    PagePiece rule;
    rule.height = 6.0 * page_unit;
    rule.before = 4.0 * page_unit;
    rule.paint = [breadth = page.breadth](QPainter& painter, QPointF at) {
        painter.fillRect(QRectF(at, QSizeF(breadth, 0.8 * page_unit)), page_ink);
    };
    pieces.push_back(std::move(rule));
}

/// A line of the contents; its page number is known once all is laid out.
PagePiece contents_line(const Heading& heading, int index, const HeadingPages& pages, const PageSize& page) {
    const bool section = heading.level <= 1;
    const double indent = section ? 0.0 : 14.0 * page_unit;
    const double room_for_number = 30.0 * page_unit;
    const QFont font = page_font(section ? 8.5 : 8.0, section);
    const PageText words(QString::fromStdString(heading.number + "  " + heading.text), font,
                         page.breadth - indent - room_for_number);
    PagePiece piece;
    piece.height = words.line_height(0);
    piece.before = (section ? 3.0 : 0.0) * page_unit;
    piece.paint = [=](QPainter& painter, QPointF at) {
        words.paint_line(painter, at + QPointF(indent, 0.0), 0, page_ink);
        const auto k = static_cast<std::size_t>(index);
        const int number = k < pages->size() ? (*pages)[k] : 0;
        const PageText right(QString::number(number), font, room_for_number, Qt::AlignRight);
        right.paint(painter, at + QPointF(page.breadth - room_for_number, 0.0), page_ink);
    };
    return piece;
}

void add_contents(std::vector<PagePiece>& pieces, const Document& document, const HeadingPages& pages,
                  const PageSize& page) {
    const int level = contents_level(document);
    int index = 0;
    for (const Block& block : document.blocks) {
        if (const auto* heading = std::get_if<Heading>(&block)) {
            if (heading->level <= level) {
                pieces.push_back(contents_line(*heading, index, pages, page));
            }
            ++index;
        }
    }
}

std::vector<PagePiece> pieces_of(const Document& document, const HeadingPages& pages, const PageSize& page) {
    std::vector<PagePiece> pieces;
    add_title(pieces, document, page);
    add_contents(pieces, document, pages, page);
    int headings = 0;
    for (const Block& block : document.blocks) {
        if (const auto* heading = std::get_if<Heading>(&block)) {
            add_heading_pieces(pieces, *heading, headings++, page);
        } else if (const auto* paragraph = std::get_if<Paragraph>(&block)) {
            add_paragraph_pieces(pieces, *paragraph, page);
        } else if (const auto* bullets = std::get_if<Bullets>(&block)) {
            add_bullet_pieces(pieces, *bullets, page);
        } else if (const auto* table = std::get_if<Table>(&block)) {
            add_table_pieces(pieces, *table, page);
        } else if (const auto* figure = std::get_if<Figure>(&block)) {
            add_figure_pieces(pieces, *figure, page);
        }
    }
    return pieces;
}

void paint_foot(QPainter& painter, const Document& document, std::size_t page, std::size_t pages,
                const PageSize& size) {
    const double y = paper_height - lower_margin + 18.0 * page_unit;
    const double half = 0.5 * size.breadth;
    const PageText left(QString::fromStdString(document.title), page_font(7.5), 1.5 * half);
    const PageText right(QStringLiteral("page %1 of %2").arg(page).arg(pages), page_font(7.5), 0.5 * half,
                         Qt::AlignRight);
    left.paint_line(painter, {side_margin, y}, 0, page_soft_ink);
    right.paint(painter, {side_margin + 1.5 * half, y}, page_soft_ink);
}

} // namespace

Outcome<std::string> pdf_bytes_of(const Document& document) {
    const OffscreenGui gui;
    const PageSize size{paper_breadth - 2.0 * side_margin, paper_height - upper_margin - lower_margin};
    const auto heading_pages = std::make_shared<std::vector<int>>();
    const std::vector<PagePiece> pieces = pieces_of(document, heading_pages, size);
    const LaidPages laid = lay_out(pieces, size.height);
    *heading_pages = laid.heading_pages;

    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter pdf(&buffer);
    pdf.setCreator(QStringLiteral("Pithward"));
    pdf.setTitle(QString::fromStdString(document.title));
    pdf.setResolution(static_cast<int>(72.0 * page_unit));
    pdf.setPageSize(QPageSize(QPageSize::A4));
    pdf.setPageMargins(QMarginsF(0.0, 0.0, 0.0, 0.0));
    QPainter painter;
    if (!painter.begin(&pdf)) {
        return fail("", "the PDF can't be begun", "report this");
    }
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    for (std::size_t k = 0; k < laid.pages.size(); ++k) {
        if (k > 0) {
            pdf.newPage();
        }
        for (const PlacedPiece& placed : laid.pages[k]) {
            if (placed.piece->paint) {
                painter.save();
                placed.piece->paint(painter, {side_margin, upper_margin + placed.top});
                painter.restore();
            }
        }
        paint_foot(painter, document, k + 1, laid.pages.size(), size);
    }
    painter.end();
    return buffer.data().toStdString();
}

} // namespace pithward::report
