#include "app/bench/lanes/joined_strips.h"

#include <QPainter>
#include <algorithm>

namespace pithward::bench {

namespace {

/// A strip in so many columns.
StripImage in_columns(const StripImage& strip, int columns) {
    StripImage scaled;
    scaled.length_mm = strip.length_mm;
    scaled.picture =
        strip.picture.scaled(columns, strip.picture.height(), Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    for (int i = 0; i < columns; ++i) {
        scaled.light.push_back(
            strip.light[static_cast<std::size_t>(i) * strip.light.size() / static_cast<std::size_t>(columns)]);
    }
    return scaled;
}

/// Puts one behind the other, middle to middle.
void append(StripImage& to, const StripImage& next) {
    QImage both(to.picture.width() + next.picture.width(), std::max(to.picture.height(), next.picture.height()),
                QImage::Format_RGB32);
    QPainter painter(&both);
    painter.drawImage(0, (both.height() - to.picture.height()) / 2, to.picture);
    painter.drawImage(to.picture.width(), (both.height() - next.picture.height()) / 2, next.picture);
    painter.end();
    to.picture = both;
    to.light.insert(to.light.end(), next.light.begin(), next.light.end());
    to.length_mm += next.length_mm;
}

} // namespace

Outcome<StripImage> joined_strips(const std::vector<LegStrip>& legs, const Work& work) {
    StripImage all;
    for (const LegStrip& leg : legs) {
        auto made = leg.strip(leg.request, work);
        if (!made) {
            return made;
        }
        if (all.picture.isNull()) {
            all = std::move(*made);
            continue;
        }
        const double per_mm = all.picture.width() / all.length_mm;
        append(all, in_columns(*made, std::max(1, static_cast<int>(made->length_mm * per_mm))));
    }
    return all;
}

} // namespace pithward::bench
