#include "app/report/paper/page_pieces.h"
#include "app/report/paper/page_text.h"

namespace pithward::report {

namespace {

constexpr double text_points = 9.0;
constexpr double gap_of_paragraphs = 5.0 * page_unit;

/// A text line by line, so that a page can end within it: never after its first or before its last line.
void add_lines(std::vector<PagePiece>& pieces, const PageText& text, double indent, double before,
               const std::function<void(QPainter&, QPointF, double height, bool first)>& beside = {}) {
    const int all = text.lines();
    for (int i = 0; i < all; ++i) {
        PagePiece piece;
        piece.height = text.line_height(i);
        piece.before = i == 0 ? before : 0.0;
        piece.keep_next = all > 1 && (i == 0 || i == all - 2);
        piece.paint = [text, i, indent, beside, height = piece.height](QPainter& painter, QPointF at) {
            text.paint_line(painter, at + QPointF(indent, 0.0), i, page_ink);
            if (beside) {
                beside(painter, at, height, i == 0);
            }
        };
        pieces.push_back(std::move(piece));
    }
}

} // namespace

void add_heading_pieces(std::vector<PagePiece>& pieces, const Heading& heading, int index, const PageSize& page) {
    const bool section = heading.level <= 1;
    const PageText text(QString::fromStdString(heading.number + "  " + heading.text),
                        page_font(section ? 13.0 : 10.5, true), page.breadth);
    PagePiece piece;
    piece.height = text.height() + (section ? 4.0 : 2.0) * page_unit;
    piece.before = (section ? 20.0 : 14.0) * page_unit;
    piece.keep_next = true;
    piece.paint = [text](QPainter& painter, QPointF at) { text.paint(painter, at, page_ink); };
    piece.heading = index;
    pieces.push_back(std::move(piece));
}

void add_paragraph_pieces(std::vector<PagePiece>& pieces, const Paragraph& paragraph, const PageSize& page) {
    const double indent = paragraph.caution ? 9.0 * page_unit : 0.0;
    const PageText text(QString::fromStdString(paragraph.text), page_font(text_points), page.breadth - indent);
    if (!paragraph.caution) {
        add_lines(pieces, text, indent, gap_of_paragraphs);
        return;
    }
    add_lines(pieces, text, indent, gap_of_paragraphs,
              [](QPainter& painter, QPointF at, double height, bool /*first*/) {
                  painter.fillRect(QRectF(at, QSizeF(2.0 * page_unit, height)), page_caution_ink);
              });
}

void add_bullet_pieces(std::vector<PagePiece>& pieces, const Bullets& bullets, const PageSize& page) {
    constexpr double indent = 11.0 * page_unit;
    for (const std::string& item : bullets.items) {
        const PageText text(QString::fromStdString(item), page_font(text_points), page.breadth - indent);
        add_lines(pieces, text, indent, 0.6 * gap_of_paragraphs,
                  [](QPainter& painter, QPointF at, double height, bool first) {
                      if (first) {
                          painter.setPen(Qt::NoPen);
                          painter.setBrush(page_ink);
                          painter.drawEllipse(at + QPointF(4.0 * page_unit, 0.45 * height), 1.2 * page_unit,
                                              1.2 * page_unit);
                      }
                  });
    }
}

} // namespace pithward::report
