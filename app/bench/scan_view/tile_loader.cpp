#include "app/bench/scan_view/tile_loader.h"

#include <deque>
#include <mutex>
#include <optional>
#include <utility>

namespace pithward::bench {

/// What the threads share: guarded by `guard`.
struct TileLoader::Queue {
    struct Job {
        TileSource source;
        std::uint64_t generation = 0;
        TileKey key;
        QRect region;
    };

    std::mutex guard;
    TileSource source;
    TileGrid grid;
    std::uint64_t generation = 0;
    std::deque<TileKey> waiting;
    std::set<TileKey> taken; ///< Being read, or failed: not read again.
    int readers = 0;

    std::optional<Job> take() {
        const std::scoped_lock lock(guard);
        if (waiting.empty() || !source) {
            --readers;
            return std::nullopt;
        }
        const TileKey key = waiting.front();
        waiting.pop_front();
        taken.insert(key);
        return Job{source, generation, key, grid.source(key)};
    }

    void done(const Job& job, bool read) {
        const std::scoped_lock lock(guard);
        if (read && job.generation == generation) {
            taken.erase(job.key);
        }
    }
};

TileLoader::TileLoader(int threads, QObject* parent)
    : QObject(parent)
    , queue_(std::make_shared<Queue>()) {
    pool_.setMaxThreadCount(threads);
}

TileLoader::~TileLoader() {
    open({}, {}, 0);
    pool_.waitForDone();
}

void TileLoader::open(TileSource source, const TileGrid& grid, std::uint64_t generation) {
    const std::scoped_lock lock(queue_->guard);
    queue_->source = std::move(source);
    queue_->grid = grid;
    queue_->generation = generation;
    queue_->waiting.clear();
    queue_->taken.clear();
}

void TileLoader::want(std::vector<TileKey> keys) {
    int more = 0;
    {
        const std::scoped_lock lock(queue_->guard);
        std::erase_if(keys, [&](const TileKey& key) { return queue_->taken.contains(key); });
        queue_->waiting.assign(keys.begin(), keys.end());
        more = std::min(static_cast<int>(keys.size()), pool_.maxThreadCount()) - queue_->readers;
        queue_->readers += std::max(0, more);
    }
    for (; more > 0; --more) {
        pool_.start([this, queue = queue_] { read_next(queue); });
    }
}

void TileLoader::read_next(const std::shared_ptr<Queue>& queue) {
    while (const auto job = queue->take()) {
        const Outcome<QImage> tile = job->source(job->region, TileGrid::reduction(job->key.level));
        // Queued before the tile may be asked for again, so that it is in the cache by then.
        QMetaObject::invokeMethod(
            this, [this, job, tile] { deliver(job->generation, job->key, tile); }, Qt::QueuedConnection);
        queue->done(*job, tile.has_value());
    }
}

void TileLoader::deliver(std::uint64_t generation, TileKey key, const Outcome<QImage>& tile) {
    if (tile) {
        emit arrived(generation, key, *tile);
    } else if (told_ != generation) {
        told_ = generation;
        emit failed(generation, QString::fromStdString(tile.error().line()));
    }
}

} // namespace pithward::bench
