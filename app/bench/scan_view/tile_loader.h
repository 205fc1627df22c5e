#pragma once

#include "app/bench/model/opened_scan.h"
#include "app/bench/scan_view/tile_grid.h"

#include <QImage>
#include <QObject>
#include <QThreadPool>
#include <cstdint>
#include <memory>
#include <set>
#include <vector>

namespace pithward::bench {

/// Reads tiles in threads of its own. What is asked for last is read first; what is no longer asked for is not read.
class TileLoader : public QObject {
    Q_OBJECT

public:
    explicit TileLoader(int threads, QObject* parent = nullptr);
    ~TileLoader() override;

    /// Turns to another scan. Nothing that was asked for before is read any more; what is being read comes out with its
    /// old generation.
    void open(TileSource source, const TileGrid& grid, std::uint64_t generation);

    /// The tiles that are wanted now, the most urgent first. Replaces every earlier wish.
    void want(std::vector<TileKey> keys);

signals:
    void arrived(quint64 generation, pithward::bench::TileKey key, const QImage& tile);
    /// Said once for each scan.
    void failed(quint64 generation, const QString& message);

private:
    struct Queue;
    void read_next(const std::shared_ptr<Queue>& queue);
    void deliver(std::uint64_t generation, TileKey key, const Outcome<QImage>& tile);

    std::shared_ptr<Queue> queue_;
    QThreadPool pool_;
    std::uint64_t told_ = 0; ///< The last generation of which a failure was told.
};

} // namespace pithward::bench
