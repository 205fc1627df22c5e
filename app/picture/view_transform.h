#pragma once

#include "libcore/specimen/units.h"

#include <QPointF>
#include <QRectF>
#include <QSize>
#include <QTransform>

namespace pithward::picture {

/// How a scan lies under the window: an image point, a scale and a turn. A pure value; every change gives a new one.
///
/// Image points are full-resolution pixels with centres at integers; view points are device-independent pixels of the
/// viewport from its upper left corner.
class ViewTransform {
public:
    ViewTransform() = default;
    /// `scale`: view pixels for one image pixel, above 0. `turn_deg`: clockwise on the screen.
    ViewTransform(QSizeF view, ImagePoint centre, double scale, double turn_deg = 0.0);

    /// The whole scan in the viewport with a margin on every side.
    [[nodiscard]] static ViewTransform fit(QSizeF view, QSize scan, double margin, double turn_deg = 0.0);

    [[nodiscard]] QPointF to_view(ImagePoint image) const;
    [[nodiscard]] ImagePoint to_image(QPointF view) const;
    /// The same map for a painter that draws in image coordinates.
    [[nodiscard]] QTransform painter_transform() const;

    /// The upright rectangle of the image that covers everything that is seen.
    [[nodiscard]] QRectF visible_region() const;

    /// Scaled about a view point: the image point under it stays there. The scale is kept within `least` to `greatest`.
    [[nodiscard]] ViewTransform zoomed(double factor, QPointF at, double least, double greatest) const;
    /// Moved with the hand: what was under view point p is then under p + by.
    [[nodiscard]] ViewTransform panned(QPointF by) const;
    [[nodiscard]] ViewTransform centred(ImagePoint at) const;
    [[nodiscard]] ViewTransform scaled_to(double scale) const;
    [[nodiscard]] ViewTransform resized(QSizeF view) const;
    [[nodiscard]] ViewTransform turned(double by_deg) const;
    /// The centre of the view brought back onto the scan, so that it can't be lost.
    [[nodiscard]] ViewTransform kept_on(QSize scan) const;

    [[nodiscard]] double scale() const { return scale_; }
    [[nodiscard]] double turn_deg() const { return turn_deg_; }
    [[nodiscard]] ImagePoint centre() const { return centre_; }
    [[nodiscard]] QSizeF view() const { return view_; }

    friend bool operator==(const ViewTransform&, const ViewTransform&) = default;

private:
    QSizeF view_{1.0, 1.0};
    ImagePoint centre_;
    double scale_ = 1.0;
    double turn_deg_ = 0.0;
};

/// How far a scan has to be turned to stand upright, by its EXIF orientation (1 to 8; mirrored ones are not mirrored).
[[nodiscard]] double upright_turn(int orientation);

} // namespace pithward::picture
