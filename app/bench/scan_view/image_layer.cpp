#include "app/bench/scan_view/image_layer.h"

#include <QPainter>
#include <QThread>
#include <algorithm>

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
}

void ImageLayer::paint(QPainter& painter, const picture::ViewTransform& view, double ratio) {
    if (grid_.scan().isEmpty()) {
        return;
    }
    level_ = grid_.level_for(view.scale() * ratio, level_);
    const QRectF region = view.visible_region();
    const auto fine = level_ < grid_.coarsest() ? grid_.tiles_in(region, level_) : std::vector<TileKey>();
    std::vector<TileKey> missing;
    std::ranges::copy_if(fine, std::back_inserter(missing), [&](TileKey key) { return !cache_.holds(key); });
    complete_ = level_ < grid_.coarsest() ? missing.empty() : coarse_.complete();

    painter.save();
    painter.setTransform(view.painter_transform(), true);
    // Close up, a person wants to see single pixels as they are.
    painter.setRenderHint(QPainter::SmoothPixmapTransform, view.scale() * ratio < 4.0);
    if (!complete_ || level_ == grid_.coarsest()) {
        paint_coarse(painter, region);
    }
    for (int level = complete_ ? level_ : grid_.coarsest() - 1; level >= level_; --level) {
        for (const TileKey key : grid_.tiles_in(region, level)) {
            if (const QImage* tile = cache_.find(key)) {
                painter.drawImage(grid_.place(key), *tile, grid_.part(key));
            }
        }
    }
    painter.restore();
    cache_.keep(fine);
    loader_.want(std::move(missing));
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
    if (cache_.put(generation, key, tile)) {
        emit updated();
    }
}

} // namespace pithward::bench
