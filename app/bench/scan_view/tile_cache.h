#pragma once

#include "app/bench/scan_view/tile_grid.h"

#include <QImage>
#include <cstdint>
#include <map>
#include <set>
#include <vector>

namespace pithward::bench {

/// Tiles held in memory under a budget. Tiles of an older scan are turned away; tiles in view are never let go.
class TileCache {
public:
    explicit TileCache(std::int64_t budget_bytes);

    /// Empties the cache for another scan; tiles of earlier generations are then late.
    void reset(std::uint64_t generation);

    /// Takes a tile in. False when it belongs to another generation, and then it is dropped.
    bool put(std::uint64_t generation, TileKey key, QImage tile);

    /// The tile, or null. Finding one counts as use.
    [[nodiscard]] const QImage* find(TileKey key);
    [[nodiscard]] bool holds(TileKey key) const { return tiles_.contains(key); }

    /// Names the tiles that must stay, and lets others go, the longest unused first, until the budget is kept.
    void keep(const std::vector<TileKey>& in_view);

    [[nodiscard]] std::int64_t bytes() const;
    [[nodiscard]] std::size_t count() const { return tiles_.size(); }
    [[nodiscard]] std::uint64_t generation() const { return generation_; }

private:
    struct Held {
        QImage tile;
        std::uint64_t used = 0;
    };
    void shrink();

    std::int64_t budget_;
    std::uint64_t generation_ = 0;
    std::uint64_t clock_ = 0;
    std::map<TileKey, Held> tiles_;
    std::set<TileKey> in_view_;
};

} // namespace pithward::bench
