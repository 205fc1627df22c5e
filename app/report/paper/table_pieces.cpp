#include "app/report/paper/page_pieces.h"
#include "app/report/paper/page_text.h"

#include <QFontMetricsF>
#include <algorithm>
#include <numeric>

namespace pithward::report {

namespace {

constexpr double table_points = 7.5;
constexpr double beside_cell = 3.5 * page_unit; ///< Free on either side of a cell's text.
constexpr std::size_t short_table = 12;         ///< Rows.
constexpr double above_cell = 1.8 * page_unit;

/// Where the columns of a table lie.
struct CellPlaces {
    std::vector<double> left;
    std::vector<double> breadth;
};

/// What a column needs so that no word of its title and no number in it is broken; at most a third of the breadth.
double least_breadth(const Table& table, std::size_t column, double breadth) {
    const QFontMetricsF bold(page_font(table_points, true));
    const QFontMetricsF plain(page_font(table_points));
    double least = 0.0;
    for (const QString& word : QString::fromStdString(table.columns[column].title).split(u' ')) {
        least = std::max(least, bold.horizontalAdvance(word));
    }
    if (table.columns[column].numbers) {
        for (const auto& row : table.rows) {
            least = std::max(least, plain.horizontalAdvance(QString::fromStdString(row[column])));
        }
    }
    constexpr double rounding = 1.0 * page_unit;
    return std::min(breadth / 3.0, least + 2.0 * beside_cell + rounding);
}

/// The breadth shared out; who would get less than needed gets that, at the cost of the others.
std::vector<double> shared_out(const Table& table, double breadth) {
    const std::size_t columns = table.columns.size();
    std::vector<double> least(columns);
    std::vector<double> wide(columns);
    for (std::size_t i = 0; i < columns; ++i) {
        least[i] = least_breadth(table, i, breadth);
    }
    const double all = std::accumulate(least.begin(), least.end(), 0.0);
    if (all >= breadth) {
        std::ranges::transform(least, wide.begin(), [&](double one) { return one * breadth / all; });
        return wide;
    }
    std::vector<bool> held(columns, false);
    for (bool again = true; again;) {
        again = false;
        double room = breadth;
        double shares = 0.0;
        for (std::size_t i = 0; i < columns; ++i) {
            room -= held[i] ? least[i] : 0.0;
            shares += held[i] ? 0.0 : table.columns[i].share;
        }
        for (std::size_t i = 0; i < columns; ++i) {
            wide[i] = held[i] ? least[i] : room * table.columns[i].share / std::max(1e-9, shares);
            if (!held[i] && wide[i] < least[i]) {
                held[i] = true;
                again = true;
            }
        }
    }
    return wide;
}

CellPlaces places_of(const Table& table, double breadth) {
    CellPlaces places;
    double x = 0.0;
    for (const double wide : shared_out(table, breadth)) {
        places.left.push_back(x + beside_cell);
        places.breadth.push_back(std::max(1.0, wide - 2.0 * beside_cell));
        x += wide;
    }
    return places;
}

void paint_rule(QPainter& painter, QPointF at, double breadth, double points, const QColor& ink) {
    painter.setPen(QPen(ink, points * page_unit, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(at, at + QPointF(breadth, 0.0));
}

/// Cells side by side.
struct CellRow {
    std::vector<PageText> cells;
    double height = 0.0;
};

CellRow cells_of(const Table& table, const CellPlaces& places, const std::vector<std::string>& row, bool titles) {
    CellRow cells;
    const bool named = !has_titles(table);
    for (std::size_t i = 0; i < table.columns.size() && i < row.size(); ++i) {
        const bool bold = titles || (named && i == 0);
        cells.cells.emplace_back(QString::fromStdString(row[i]), page_font(table_points, bold), places.breadth[i],
                                 table.columns[i].numbers ? Qt::AlignRight : Qt::AlignLeft);
        cells.height = std::max(cells.height, cells.cells.back().height());
    }
    cells.height += 2.0 * above_cell;
    return cells;
}

void paint_cells(QPainter& painter, QPointF at, const CellRow& row, const CellPlaces& places, bool at_foot) {
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        const double down = at_foot ? row.height - above_cell - row.cells[i].height() : above_cell;
        row.cells[i].paint(painter, at + QPointF(places.left[i], down), page_ink);
    }
}

PagePiece titles_piece(const Table& table, const CellPlaces& places, double breadth) {
    PagePiece piece;
    piece.keep_next = true;
    if (!has_titles(table)) {
        piece.paint = [breadth](QPainter& painter, QPointF at) { paint_rule(painter, at, breadth, 0.8, page_ink); };
        return piece;
    }
    std::vector<std::string> titles;
    for (const Column& column : table.columns) {
        titles.push_back(column.title);
    }
    const CellRow row = cells_of(table, places, titles, true);
    piece.height = row.height + 1.0 * page_unit;
    piece.paint = [row, places, breadth, height = piece.height](QPainter& painter, QPointF at) {
        paint_rule(painter, at, breadth, 0.8, page_ink);
        paint_cells(painter, at, row, places, true);
        paint_rule(painter, at + QPointF(0.0, height - 0.5 * page_unit), breadth, 0.5, page_soft_ink);
    };
    return piece;
}

/// What stands above the rows of a page on which a table goes on.
std::shared_ptr<const PagePiece> again_piece(const Table& table, const PagePiece& titles, double breadth) {
    const PageText words(QStringLiteral("Table %1, continued").arg(table.number), page_font(table_points), breadth);
    auto piece = std::make_shared<PagePiece>();
    const double down = words.height() + 2.0 * page_unit;
    piece->height = down + titles.height;
    piece->paint = [words, down, paint = titles.paint](QPainter& painter, QPointF at) {
        words.paint(painter, at, page_soft_ink);
        paint(painter, at + QPointF(0.0, down));
    };
    return piece;
}

void add_caption(std::vector<PagePiece>& pieces, const Table& table, double breadth) {
    const QString label = QStringLiteral("Table %1.").arg(table.number);
    const PageText text(label + u' ' + QString::fromStdString(table.caption), page_font(8.0), breadth, Qt::AlignLeft,
                        static_cast<int>(label.size()));
    PagePiece piece;
    piece.height = text.height() + 3.0 * page_unit;
    piece.before = 12.0 * page_unit;
    piece.keep_next = true;
    piece.paint = [text](QPainter& painter, QPointF at) { text.paint(painter, at, page_ink); };
    pieces.push_back(std::move(piece));
}

void add_note(std::vector<PagePiece>& pieces, const Table& table, double breadth) {
    if (table.note.empty()) {
        return;
    }
    const PageText text(QString::fromStdString(table.note), page_font(7.0), breadth);
    PagePiece piece;
    piece.height = text.height();
    piece.before = 2.5 * page_unit;
    piece.paint = [text](QPainter& painter, QPointF at) { text.paint(painter, at, page_soft_ink); };
    pieces.push_back(std::move(piece));
}

} // namespace

void add_table_pieces(std::vector<PagePiece>& pieces, const Table& table, const PageSize& page) {
    const CellPlaces places = places_of(table, page.breadth);
    add_caption(pieces, table, page.breadth);
    const PagePiece titles = titles_piece(table, places, page.breadth);
    const auto again = again_piece(table, titles, page.breadth);
    pieces.push_back(titles);
    for (std::size_t k = 0; k < table.rows.size(); ++k) {
        const CellRow row = cells_of(table, places, table.rows[k], false);
        const bool last = k + 1 == table.rows.size();
        PagePiece piece;
        piece.height = row.height;
        // A short table is not broken; of a long one no row and no note stands alone on a page.
        piece.keep_next =
            last ? !table.note.empty() : table.rows.size() <= short_table || k == 0 || k + 2 == table.rows.size();
        piece.again = k == 0 ? nullptr : again;
        piece.paint = [row, places, last, k, breadth = page.breadth](QPainter& painter, QPointF at) {
            if (k > 0) {
                paint_rule(painter, at, breadth, 0.3, QColor(0xdd, 0xdf, 0xe1));
            }
            paint_cells(painter, at, row, places, false);
            if (last) {
                paint_rule(painter, at + QPointF(0.0, row.height), breadth, 0.8, page_ink);
            }
        };
        pieces.push_back(std::move(piece));
    }
    if (table.rows.empty()) {
        pieces.back().keep_next = false;
    }
    add_note(pieces, table, page.breadth);
}

} // namespace pithward::report
