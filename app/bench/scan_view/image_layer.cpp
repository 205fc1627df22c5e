#include "app/bench/scan_view/image_layer.h"

#include <QPainter>
#include <QThread>
#include <algorithm>

namespace pithward::bench {

ImageLayer::ImageLayer(QObject* parent)
    : QObject(parent)
    , loader_(std::clamp(QThread::idealThreadCount() - 1, 1, 4)) {
    connect(&loader_, &TileLoader::arrived, this, &ImageLayer::take);
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
    const auto fine = grid_.tiles_in(region, level_);
    const auto coarse = grid_.tiles_in(region, grid_.coarsest());

    std::vector<TileKey> missing;
    std::vector<TileKey> needed = fine;
    needed.insert(needed.end(), coarse.begin(), coarse.end());
    std::ranges::copy_if(coarse, std::back_inserter(missing), [&](TileKey key) { return !cache_.holds(key); });
    complete_ = std::ranges::all_of(fine, [&](TileKey key) { return cache_.holds(key); });
    if (level_ != grid_.coarsest()) {
        std::ranges::copy_if(fine, std::back_inserter(missing), [&](TileKey key) { return !cache_.holds(key); });
    }

    painter.save();
    painter.setTransform(view.painter_transform(), true);
    // Close up, a person wants to see single pixels as they are.
    painter.setRenderHint(QPainter::SmoothPixmapTransform, view.scale() * ratio < 4.0);
    for (int level = complete_ ? level_ : grid_.coarsest(); level >= level_; --level) {
        for (const TileKey key : grid_.tiles_in(region, level)) {
            if (const QImage* tile = cache_.find(key)) {
                painter.drawImage(grid_.place(key), *tile, grid_.part(key));
            }
        }
    }
    painter.restore();
    cache_.keep(needed);
    loader_.want(std::move(missing));
}

void ImageLayer::take(quint64 generation, TileKey key, const QImage& tile) {
    if (cache_.put(generation, key, tile)) {
        emit updated();
    }
}

} // namespace pithward::bench
