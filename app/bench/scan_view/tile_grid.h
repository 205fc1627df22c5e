#pragma once

#include <QMetaType>
#include <QRect>
#include <QRectF>
#include <QSize>
#include <compare>
#include <vector>

namespace pithward::bench {

/// One tile of one level. Level 0 is full resolution; each further level halves it.
struct TileKey {
    int level = 0;
    int column = 0;
    int row = 0;
    friend auto operator<=>(const TileKey&, const TileKey&) = default;
};

/// How a scan is cut into tiles. Pixel i of level l covers the map edges [i 2^l, (i + 1) 2^l).
class TileGrid {
public:
    static constexpr int side = 512;         ///< Pixels of a tile, without its apron.
    static constexpr int coarse_side = 2560; ///< The coarsest level is shown as one picture of about a screen.
    static constexpr int most_levels = 6;    ///< Beyond the finest.
    static constexpr int apron = 1;          ///< True neighbours round a tile, so that smooth drawing shows no seams.

    TileGrid() = default;
    explicit TileGrid(QSize scan);

    [[nodiscard]] QSize scan() const { return scan_; }
    [[nodiscard]] int coarsest() const { return coarsest_; }
    [[nodiscard]] static int reduction(int level) { return 1 << level; }

    /// The level to show at a scale (device pixels for one image pixel). The present level is kept while it is nearly
    /// as good, so that a small zoom to and fro does not load twice; give -1 when there is none.
    [[nodiscard]] int level_for(double scale, int present) const;

    /// The tiles of a level that touch a region in image coordinates, from its middle outward.
    [[nodiscard]] std::vector<TileKey> tiles_in(const QRectF& region, int level) const;

    /// The full-resolution pixels of a tile with its apron, cut to whole squares of the level inside the scan.
    [[nodiscard]] QRect source(TileKey key) const;
    /// Where the tile lies in image coordinates (pixel centres at integers), without its apron.
    [[nodiscard]] QRectF place(TileKey key) const;
    /// The part of a tile's own pixels that fills its place.
    [[nodiscard]] QRectF part(TileKey key) const;

private:
    /// The tile's pixels of its level, with `border` more on each side where the scan has them.
    [[nodiscard]] QRect cells(TileKey key, int border) const;

    QSize scan_;
    int coarsest_ = 0;
};

} // namespace pithward::bench

Q_DECLARE_METATYPE(pithward::bench::TileKey)
