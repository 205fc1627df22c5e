#include "app/bench/scan_view/image_layer.h"

#include <QPainter>
#include <QThread>
#include <algorithm>
#include <iterator>

namespace pithward::bench {

ImageLayer::ImageLayer(QObject* parent)
    : QObject(parent)
    , loader_(std::clamp(QThread::idealThreadCount() - 1, 1, 4)) {
    connect(&loader_, &TileLoader::arrived, this, &ImageLayer::take);
    connect(&coarse_, &CoarsePicture::grown, this, &ImageLayer::updated);
    connect(&coarse_, &CoarsePicture::failed, this, &ImageLayer::failed);
    connect(&loader_, &TileLoader::failed, this, [this](quint64 generation, const QString& message) {
        if (generation == generation_) {
            emit failed(message);
        }
    });
}

void ImageLayer::show(const std::shared_ptr<const OpenedScan>& scan) {
    ++generation_;
    grid_ = scan ? TileGrid({scan->header.width, scan->header.height}) : TileGrid();
    cache_.reset(generation_);
    coarse_.show(scan, TileGrid::reduction(grid_.coarsest()));
    loader_.open(scan ? scan->pixels : TileSource(), grid_, generation_);
    level_ = -1;
    complete_ = false;
    missing_.clear();
}

void ImageLayer::paint(QPainter& painter, const picture::ViewTransform& view, double ratio) {
    if (grid_.scan().isEmpty()) {
        return;
    }
    level_ = grid_.level_for(view.scale() * ratio, level_);
    const QRectF region = view.visible_region();
    const bool from_tiles = level_ < grid_.coarsest();
    const auto in_view = from_tiles ? grid_.tiles_in(region, level_) : std::vector<TileKey>();
    missing_.clear();
    std::ranges::copy_if(in_view, std::inserter(missing_, missing_.end()),
                         [&](TileKey key) { return !cache_.holds(key); });
    complete_ = from_tiles ? missing_.empty() : coarse_.complete();

    painter.save();
    painter.setTransform(view.painter_transform(), true);
    // Close up, a person wants to see single pixels as they are.
    painter.setRenderHint(QPainter::SmoothPixmapTransform, view.scale() * ratio < 4.0);
    if (const QRectF behind = from_tiles ? place_of_missing(region) : region; !behind.isEmpty()) {
        paint_coarse(painter, behind);
        for (int level = grid_.coarsest() - 1; level > level_; --level) {
            paint_tiles(painter, grid_.tiles_in(behind, level));
        }
    }
    paint_tiles(painter, in_view);
    painter.restore();
    ask(region, in_view);
}

QRectF ImageLayer::place_of_missing(const QRectF& region) const {
    QRectF place;
    for (const TileKey key : missing_) {
        place |= grid_.place(key);
    }
    return place & region;
}

void ImageLayer::paint_tiles(QPainter& painter, const std::vector<TileKey>& keys) {
    for (const TileKey key : keys) {
        if (const QImage* tile = cache_.find(key)) {
            painter.drawImage(grid_.place(key), *tile, grid_.part(key));
        }
    }
}

void ImageLayer::ask(const QRectF& region, const std::vector<TileKey>& in_view) {
    std::vector<TileKey> wanted;
    std::ranges::copy_if(in_view, std::back_inserter(wanted), [&](TileKey key) { return missing_.contains(key); });
    std::vector<TileKey> kept = in_view;
    if (level_ < grid_.coarsest()) {
        // Half a tile further on each side, so that a view that is moved is mostly complete at once.
        const double ahead = 0.5 * TileGrid::side * TileGrid::reduction(level_);
        for (const TileKey key : grid_.tiles_in(region.adjusted(-ahead, -ahead, ahead, ahead), level_)) {
            if (std::ranges::find(in_view, key) == in_view.end()) {
                kept.push_back(key);
                if (!cache_.holds(key)) {
                    wanted.push_back(key);
                }
            }
        }
    }
    cache_.keep(kept);
    loader_.want(std::move(wanted));
}

void ImageLayer::paint_coarse(QPainter& painter, const QRectF& region) const {
    const QImage& picture = coarse_.picture();
    const double r = TileGrid::reduction(grid_.coarsest());
    // Whole pixels of the picture round what is in view.
    const QRect part = QRectF((region.x() + 0.5) / r, (region.y() + 0.5) / r, region.width() / r, region.height() / r)
                           .toAlignedRect()
                           .adjusted(-1, -1, 1, 1)
                           .intersected(picture.rect());
    if (!part.isEmpty()) {
        painter.drawImage(QRectF(part.x() * r - 0.5, part.y() * r - 0.5, part.width() * r, part.height() * r), picture,
                          QRectF(part));
    }
}

void ImageLayer::take(quint64 generation, TileKey key, const QImage& tile) {
    if (cache_.put(generation, key, tile) && missing_.contains(key)) {
        emit updated();
    }
}

} // namespace pithward::bench
