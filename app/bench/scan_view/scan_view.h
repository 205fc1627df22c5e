#pragma once

#include "app/bench/model/bench_model.h"
#include "app/bench/scan_view/image_layer.h"
#include "app/bench/tools/boundary_grip.h"
#include "app/bench/tools/path_grip.h"
#include "app/bench/tools/pith_grip.h"
#include "app/bench/tools/tool.h"
#include "app/picture/marks_layer.h"
#include "app/picture/view_transform.h"

#include <QAbstractScrollArea>
#include <QPixmap>
#include <functional>
#include <memory>
#include <optional>

namespace pithward::bench {

/// The scan on the screen: pan and zoom, the marks over it, the tool in hand. Reads the model, changes nothing in it.
class ScanView : public QAbstractScrollArea {
    Q_OBJECT

public:
    explicit ScanView(const BenchModel& model, QWidget* parent = nullptr);
    ~ScanView() override;

    [[nodiscard]] const picture::ViewTransform& view() const { return view_; }
    [[nodiscard]] const ImageLayer& image() const { return image_; }
    /// Shows another stretch of the scan, kept on it.
    void set_view(const picture::ViewTransform& view);
    /// Whether all of the scan that is in view is there as sharp as it will be.
    [[nodiscard]] bool picture_complete() const { return image_.complete(); }
    [[nodiscard]] bool has_tool() const { return tool_ != nullptr; }
    [[nodiscard]] bool marks_hidden() const { return hidden_; }

    void show_all();
    void show_pixels();
    void zoom(double factor);
    void turn(double by_deg);
    /// Turns the view so that this way runs from left to right.
    void level(ImagePoint from, ImagePoint to);
    /// Brings a place to the middle, close enough to tell single rings.
    void go_to(ImagePoint at);
    /// Moves the view only where a place is not well inside it.
    void bring_into_view(ImagePoint at);
    void hide_marks(bool hidden);
    /// Picks a ring of the present core out; 0 for none.
    void pick_ring(int number);
    /// Picks the boundary out that is in hand.
    void pick_boundary(std::optional<BoundaryId> id);
    /// The last place under the cursor; nothing before it came to the scan.
    [[nodiscard]] std::optional<ImagePoint> cursor() const;
    /// The boundary under the cursor.
    [[nodiscard]] std::optional<BoundaryId> under_cursor() const;
    /// The boundary that the mouse has been moved to since this was last asked: a mouse that rests is not pointing.
    [[nodiscard]] std::optional<BoundaryId> newly_pointed();
    /// The bend or end of the path under the cursor.
    [[nodiscard]] std::optional<Vertex> bend_under_cursor() const { return path_grip_.bend(); }
    /// How far from a mark it still counts as pointed at, in image pixels.
    [[nodiscard]] double reach_px() const;
    /// Picks a finding of the present core out, by its number in the list; 0 for none.
    void pick_finding(int number);
    /// Takes a tool in hand, or puts it away. `drawn` gets what it was for, unless it is given up.
    using Drawn = std::function<void(const std::vector<ImagePoint>&)>;
    void take_tool(std::unique_ptr<Tool> tool, Drawn drawn = {});

signals:
    void view_changed();
    /// The ring of the present core under the cursor; 0 for none.
    void ring_pointed(int number);
    void core_clicked(const pithward::bench::CorePlace& place);
    /// Another boundary lies under the cursor, or none.
    void boundary_pointed();
    void boundary_clicked(pithward::BoundaryId id);
    void boundary_dropped(const pithward::bench::GripDrop& drop);
    void path_dropped(const pithward::bench::PathDrop& drop);
    void pith_dropped(const pithward::bench::PithDrop& drop);
    /// The wood of the present core was double-clicked; `freely` with Shift.
    void wood_double_clicked(pithward::ImagePoint at, bool freely);
    /// The right button, with no tool in hand.
    void menu_wanted(const QPoint& screen);
    /// What a click will do; empty when no tool is in hand.
    void hint_changed(const QString& hint);
    void tool_changed();
    void failed(const QString& message);

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    bool viewportEvent(QEvent* event) override;
    void changeEvent(QEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;

private:
    static constexpr double greatest_scale = 32.0; ///< View pixels for one image pixel.

    struct Press {
        QPointF at;
        QPointF last;
        bool dragged = false;
        Qt::MouseButton button = Qt::NoButton;
    };

    void follow(BenchModel::Changes changes);
    void sync_scroll_bars();
    void refresh_marks();
    void draw_marks(QPainter& painter);
    void draw_preview(QPainter& painter);
    void draw_picked_boundaries(QPainter& painter);
    void draw_pith(QPainter& painter);
    void draw_chip(QPainter& painter);
    void clicked(QPointF at);
    void pointed(QPointF at);
    void bending(bool held);
    [[nodiscard]] bool dragging() const { return grip_.dragging() || path_grip_.dragging() || pith_grip_.dragging(); }
    void answer(const ToolAnswer& answer);
    [[nodiscard]] bool tool_key(int key);
    [[nodiscard]] QSize scan_size() const;
    [[nodiscard]] double least_scale() const;

    const BenchModel& model_;
    ImageLayer image_;
    picture::ViewTransform view_;
    QPixmap marks_;                              ///< The committed marks as they lie over the whole viewport.
    std::vector<picture::FindingMark> findings_; ///< Those of the present core among the marks.
    bool marks_fresh_ = false;
    bool hidden_ = false;
    bool fitted_ = true; ///< The view shows everything and goes on doing so when the window is resized.
    int picked_ring_ = 0;
    int pointed_ring_ = 0;
    int picked_finding_ = 0;
    std::unique_ptr<Tool> tool_;
    Drawn drawn_;
    std::optional<Press> press_;
    BoundaryGrip grip_;
    PathGrip path_grip_;
    PithGrip pith_grip_;
    bool moved_ = false;   ///< The mouse has been moved and nobody has asked where to.
    bool bending_ = false; ///< Ctrl is held: a drag bends the path.
    std::optional<BoundaryId> picked_boundary_;
    std::optional<QPointF> cursor_; ///< In the view; nothing while the mouse is elsewhere.
    std::optional<ImagePoint> last_cursor_;
    int shown_scan_ = 0;
    bool syncing_ = false;
};

} // namespace pithward::bench
