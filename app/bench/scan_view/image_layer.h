#pragma once

#include "app/bench/model/opened_scan.h"
#include "app/bench/scan_view/coarse_picture.h"
#include "app/bench/scan_view/tile_cache.h"
#include "app/bench/scan_view/tile_loader.h"
#include "app/picture/view_transform.h"

#include <QObject>
#include <memory>
#include <set>
#include <vector>

class QPainter;

namespace pithward::bench {

/// The scan itself, drawn from a coarse picture of all of it, which fills while the file is read, and over it from
/// tiles of finer levels where those are wanted and have come.
class ImageLayer : public QObject {
    Q_OBJECT

public:
    explicit ImageLayer(QObject* parent = nullptr);

    /// Turns to another scan, or to none (null).
    void show(const std::shared_ptr<const OpenedScan>& scan);

    /// Draws what is in the view and asks for what is still missing. `ratio`: device pixels for one view pixel.
    void paint(QPainter& painter, const picture::ViewTransform& view, double ratio);

    /// True when every tile that the view wants is there.
    [[nodiscard]] bool complete() const { return complete_; }

signals:
    void updated();
    void failed(const QString& message);

private:
    void paint_coarse(QPainter& painter, const QRectF& region) const;
    void paint_tiles(QPainter& painter, const std::vector<TileKey>& keys);
    /// The part of the view that tiles are still missing of; empty where none are.
    [[nodiscard]] QRectF place_of_missing(const QRectF& region) const;
    /// Asks for the tiles that are missing, and then for those just outside the view.
    void ask(const QRectF& region, const std::vector<TileKey>& in_view);
    void take(quint64 generation, TileKey key, const QImage& tile);

    static constexpr std::int64_t budget_bytes = 192LL * 1024 * 1024;

    TileGrid grid_;
    CoarsePicture coarse_;
    TileCache cache_{budget_bytes};
    TileLoader loader_;
    std::uint64_t generation_ = 0;
    int level_ = -1;
    bool complete_ = false;
    std::set<TileKey> missing_; ///< Of those in view.
};

} // namespace pithward::bench
