#pragma once

#include "app/picture/nearest_mark.h"

#include <QCoreApplication>
#include <QString>
#include <optional>

namespace pithward::bench {

/// What a drag of a boundary asks for when it is let go.
struct GripDrop {
    BoundaryId id;
    bool turned = false;  ///< Turned about its place on the path, else moved.
    ImagePoint at;        ///< Where it was let go.
    double tangent = 0.0; ///< Its new direction, when turned.
};

/// The hand at the boundaries: which one is under it, and one that is being dragged. Near the path a boundary is taken
/// to be moved, near an end of its line to be turned. Changes no document; places are image points.
class BoundaryGrip {
    Q_DECLARE_TR_FUNCTIONS(BoundaryGrip)

public:
    /// Looks for what is under the cursor. True when it is something else than before.
    bool point(const picture::MeasuredCore* core, const std::string& scan, ImagePoint at, double reach_px);
    /// Begins a drag of what is under the cursor. False when nothing is.
    bool take();
    void drag(ImagePoint to);
    /// Ends the drag; nothing when it never left its place.
    std::optional<GripDrop> let_go();
    void give_up();

    [[nodiscard]] const std::optional<picture::NearBoundary>& under() const { return under_; }
    [[nodiscard]] bool dragging() const { return dragging_; }
    /// The boundary as it would be if it were let go now; nothing while it is where it was.
    [[nodiscard]] std::optional<Boundary> preview(const picture::MeasuredCore& core, const std::string& scan) const;
    /// What the hand can do here, in a few words; empty where it is on wood of another core or on none.
    [[nodiscard]] QString hint() const;

private:
    std::optional<picture::NearBoundary> under_;
    bool on_wood_ = false;
    bool on_candidate_ = false;
    bool confirmed_ = false;
    ImagePoint centre_;
    bool dragging_ = false;
    std::optional<ImagePoint> to_;
};

} // namespace pithward::bench
