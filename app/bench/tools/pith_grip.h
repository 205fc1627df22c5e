#pragma once

#include "app/bench/tools/pith_shape.h"

#include <QCoreApplication>
#include <QString>
#include <optional>
#include <vector>

namespace pithward::bench {

/// What a drag of the pith asks for when it is let go: the centre here, or a ring's arc through here.
struct PithDrop {
    std::optional<BoundaryId> ring; ///< The ring whose arc was bent; nothing where the centre was moved.
    ImagePoint to;
};

/// The hand at the present core's pith: its centre, or the handle of a ring's arc. Changes no document; places are
/// image points.
class PithGrip {
    Q_DECLARE_TR_FUNCTIONS(PithGrip)

public:
    /// Looks for what is under the cursor.
    void point(const picture::MeasuredCore* core, const std::string& scan, ImagePoint at, double reach_px);
    /// Begins a drag of what is under the cursor. False when nothing is.
    bool take();
    void drag(ImagePoint to);
    /// Ends the drag; nothing when it never left its place.
    std::optional<PithDrop> let_go();
    void give_up();

    [[nodiscard]] bool under() const { return under_.has_value(); }
    [[nodiscard]] bool dragging() const { return dragging_; }
    /// The centre as it would be if it were let go now; nothing while it is where it was.
    [[nodiscard]] std::optional<ImagePoint> centre(const picture::MeasuredCore& core) const;
    [[nodiscard]] QString hint() const;

private:
    struct Under {
        std::optional<BoundaryId> ring;
    };
    std::optional<Under> under_;
    bool dragging_ = false;
    std::optional<ImagePoint> to_;
};

} // namespace pithward::bench
