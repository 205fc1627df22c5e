#include "app/bench/scan_view/tile_cache.h"

#include <numeric>
#include <utility>

namespace pithward::bench {

TileCache::TileCache(std::int64_t budget_bytes)
    : budget_(budget_bytes) {}

void TileCache::reset(std::uint64_t generation) {
    generation_ = generation;
    tiles_.clear();
    in_view_.clear();
}

bool TileCache::put(std::uint64_t generation, TileKey key, QImage tile) {
    if (generation != generation_ || tile.isNull()) {
        return false;
    }
    tiles_[key] = Held{std::move(tile), ++clock_};
    shrink();
    return true;
}

const QImage* TileCache::find(TileKey key) {
    const auto held = tiles_.find(key);
    if (held == tiles_.end()) {
        return nullptr;
    }
    held->second.used = ++clock_;
    return &held->second.tile;
}

void TileCache::keep(const std::vector<TileKey>& in_view) {
    in_view_ = {in_view.begin(), in_view.end()};
    shrink();
}

std::int64_t TileCache::bytes() const {
    return std::accumulate(tiles_.begin(), tiles_.end(), std::int64_t{0},
                           [](std::int64_t sum, const auto& entry) { return sum + entry.second.tile.sizeInBytes(); });
}

void TileCache::shrink() {
    std::int64_t held = bytes();
    while (held > budget_) {
        auto oldest = tiles_.end();
        for (auto tile = tiles_.begin(); tile != tiles_.end(); ++tile) {
            if (!in_view_.contains(tile->first) &&
                (oldest == tiles_.end() || tile->second.used < oldest->second.used)) {
                oldest = tile;
            }
        }
        if (oldest == tiles_.end()) {
            return;
        }
        held -= oldest->second.tile.sizeInBytes();
        tiles_.erase(oldest);
    }
}

} // namespace pithward::bench
