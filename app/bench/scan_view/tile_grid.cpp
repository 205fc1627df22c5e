#include "app/bench/scan_view/tile_grid.h"

#include <algorithm>
#include <cmath>

namespace pithward::bench {

TileGrid::TileGrid(QSize scan)
    : scan_(scan) {
    // Long scans are thin: a level needs some rows left to be worth a look.
    constexpr int least_rows = 8;
    const int longer = std::max(scan.width(), scan.height());
    const int shorter = std::min(scan.width(), scan.height());
    while ((longer >> coarsest_) > coarse_side && coarsest_ < most_levels &&
           (shorter >> (coarsest_ + 1)) >= least_rows) {
        ++coarsest_;
    }
}

int TileGrid::level_for(double scale, int present) const {
    constexpr double slack = 0.25; // of a level
    const double exact = -std::log2(std::max(scale, 1e-9));
    if (present >= 0 && present <= coarsest_ && present <= exact + slack && present >= exact - 1.0 - slack) {
        return present;
    }
    return std::clamp(static_cast<int>(std::floor(exact)), 0, coarsest_);
}

std::vector<TileKey> TileGrid::tiles_in(const QRectF& region, int level) const {
    const QRectF inside = region.translated(0.5, 0.5).intersected(QRectF(QPointF(), QSizeF(scan_)));
    std::vector<TileKey> keys;
    if (inside.isEmpty()) {
        return keys;
    }
    const double step = double(side) * reduction(level);
    const int last_column = static_cast<int>(std::ceil(inside.right() / step)) - 1;
    const int last_row = static_cast<int>(std::ceil(inside.bottom() / step)) - 1;
    for (int row = static_cast<int>(inside.top() / step); row <= last_row; ++row) {
        for (int column = static_cast<int>(inside.left() / step); column <= last_column; ++column) {
            if (!cells({level, column, row}, 0).isEmpty()) {
                keys.push_back({level, column, row});
            }
        }
    }
    const QPointF middle = inside.center() / step - QPointF(0.5, 0.5);
    std::ranges::stable_sort(
        keys, {}, [&](const TileKey& key) { return std::hypot(key.column - middle.x(), key.row - middle.y()); });
    return keys;
}

QRect TileGrid::cells(TileKey key, int border) const {
    const QRect all(0, 0, scan_.width() >> key.level, scan_.height() >> key.level);
    const QRect own(key.column * side, key.row * side, side, side);
    return own.adjusted(-border, -border, border, border).intersected(all);
}

QRect TileGrid::source(TileKey key) const {
    const QRect taken = cells(key, apron);
    const int r = reduction(key.level);
    return {taken.x() * r, taken.y() * r, taken.width() * r, taken.height() * r};
}

QRectF TileGrid::place(TileKey key) const {
    const QRect own = cells(key, 0);
    const double r = reduction(key.level);
    return {own.x() * r - 0.5, own.y() * r - 0.5, own.width() * r, own.height() * r};
}

QRectF TileGrid::part(TileKey key) const {
    const QRect own = cells(key, 0);
    return QRectF(own.translated(-cells(key, apron).topLeft()));
}

} // namespace pithward::bench
