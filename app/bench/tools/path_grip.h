#pragma once

#include "app/picture/measured_core.h"
#include "libcore/edit/path_shapes.h"

#include <QCoreApplication>
#include <QString>
#include <optional>
#include <vector>

namespace pithward::bench {

/// What a drag of the path asks for when it is let go.
struct PathDrop {
    Vertex vertex;
    bool fresh = false; ///< A new bend, put in before `vertex`; else that vertex is moved.
    ImagePoint to;
};

/// The hand at the present core's path: the bend or end under it, and one that is being dragged. With Ctrl held the
/// path is bent anew wherever it is taken. Changes no document; places are image points.
class PathGrip {
    Q_DECLARE_TR_FUNCTIONS(PathGrip)

public:
    /// Looks for what is under the cursor.
    void point(const picture::MeasuredCore* core, const std::string& scan, ImagePoint at, double reach_px,
               bool bending);
    /// Begins a drag of what is under the cursor. False when nothing is.
    bool take();
    void drag(ImagePoint to);
    /// Ends the drag; nothing when it never left its place.
    std::optional<PathDrop> let_go();
    void give_up();

    /// The bend under the cursor that can be taken away.
    [[nodiscard]] std::optional<Vertex> bend() const;
    [[nodiscard]] bool under() const { return under_.has_value(); }
    [[nodiscard]] bool dragging() const { return dragging_; }
    /// The leg's line as it would be if it were let go now; empty while it is where it was.
    [[nodiscard]] std::vector<ImagePoint> preview() const;
    [[nodiscard]] QString hint() const;

private:
    enum class At { BarkEnd, InnerEnd, Bend, Stretch };
    struct Under {
        Vertex vertex;
        At at = At::Bend;
        std::vector<ImagePoint> leg;
    };
    std::optional<Under> under_;
    bool dragging_ = false;
    std::optional<ImagePoint> to_;
};

/// The vertex before which a new one on the path comes, at a place within reach of it.
[[nodiscard]] std::optional<Vertex> vertex_after(const Reading& reading, const std::string& scan, ImagePoint at,
                                                 double reach_px);

} // namespace pithward::bench
