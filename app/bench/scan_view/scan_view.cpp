#include "app/bench/scan_view/scan_view.h"

#include "app/bench/look/appearance.h"
#include "app/bench/look/wording.h"
#include "app/picture/polyline.h"
#include "app/picture/ring_places.h"

#include <QApplication>
#include <QPainter>
#include <QScrollBar>
#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace pithward::bench {

namespace {

constexpr double margin = 44.0; ///< Room for the words beyond the ends of a path.

} // namespace

ScanView::ScanView(const BenchModel& model, QWidget* parent)
    : QAbstractScrollArea(parent)
    , model_(model) {
    setFocusPolicy(Qt::StrongFocus);
    setFrameShape(QFrame::NoFrame);
    setAccessibleName(tr("Scan"));
    setAccessibleDescription(tr("The scan with its paths and ring boundaries"));
    viewport()->setMouseTracking(true);
    viewport()->setCursor(Qt::OpenHandCursor);
    connect(&image_, &ImageLayer::updated, viewport(), qOverload<>(&QWidget::update));
    connect(&image_, &ImageLayer::failed, this, &ScanView::failed);
    connect(&model_, &BenchModel::changed, this, &ScanView::follow);
}

ScanView::~ScanView() = default;

void ScanView::follow(BenchModel::Changes changes) {
    const BenchScan* scan = model_.scan();
    const int id = scan != nullptr ? scan->id : 0;
    if (id != shown_scan_) {
        shown_scan_ = id;
        take_tool(nullptr);
        image_.show(scan != nullptr ? scan->opened : nullptr);
        view_ = view_.turned(-view_.turn_deg() +
                             (scan != nullptr ? picture::upright_turn(scan->opened->header.orientation) : 0.0));
        show_all();
    }
    if (changes & (BenchModel::Cores | BenchModel::PresentCore)) {
        pick_ring(0);
        pick_finding(0);
    }
    grip_.give_up();
    path_grip_.give_up();
    pith_grip_.give_up();
    if (cursor_) {
        pointed(*cursor_); // what lies under the cursor may be another now
    }
    refresh_marks();
}

QSize ScanView::scan_size() const {
    const BenchScan* scan = model_.scan();
    return scan != nullptr ? QSize(scan->opened->header.width, scan->opened->header.height) : QSize();
}

double ScanView::least_scale() const {
    return 0.5 * picture::ViewTransform::fit(viewport()->size(), scan_size(), margin, view_.turn_deg()).scale();
}

void ScanView::set_view(const picture::ViewTransform& view) {
    const picture::ViewTransform kept = view.kept_on(scan_size());
    fitted_ = false;
    if (kept == view_) {
        return;
    }
    view_ = kept;
    sync_scroll_bars();
    refresh_marks();
    emit view_changed();
}

void ScanView::show_all() {
    set_view(picture::ViewTransform::fit(viewport()->size(), scan_size(), margin, view_.turn_deg()));
    fitted_ = true;
}

void ScanView::show_pixels() {
    set_view(view_.scaled_to(1.0 / devicePixelRatioF()));
}

void ScanView::zoom(double factor) {
    set_view(view_.zoomed(factor, QRectF(viewport()->rect()).center(), least_scale(), greatest_scale));
}

void ScanView::turn(double by_deg) {
    const bool fitted = fitted_;
    set_view(view_.turned(by_deg));
    if (fitted) {
        show_all();
    }
}

void ScanView::level(ImagePoint from, ImagePoint to) {
    const ImagePoint way = to - from;
    turn(-std::atan2(way.y, way.x) * 180.0 / std::numbers::pi - view_.turn_deg());
}

void ScanView::go_to(ImagePoint at) {
    constexpr double close_px_per_mm = 60.0;
    const BenchScan* scan = model_.scan();
    const double close = scan != nullptr && scan->calibration ? close_px_per_mm / scan->calibration->px_per_mm() : 1.0;
    // The lettering above the wood and below it is to be seen too.
    constexpr double lettering = 45.0;
    const double half_breadth = model_.core() != nullptr ? model_.core()->half_breadth_px : 0.0;
    const double room = std::max(40.0, 0.5 * viewport()->height() - lettering);
    const double near = half_breadth > 0.0 ? std::min(close, room / half_breadth) : close;
    set_view(view_.scaled_to(std::max(view_.scale(), near)).centred(at));
}

void ScanView::bring_into_view(ImagePoint at) {
    const QRectF room(viewport()->rect());
    const QRectF well_inside = room.adjusted(0.1 * room.width(), 0, -0.1 * room.width(), 0);
    if (!well_inside.contains(view_.to_view(at))) {
        set_view(view_.centred(at));
    }
}

void ScanView::hide_marks(bool hidden) {
    if (hidden != hidden_) {
        hidden_ = hidden;
        viewport()->update();
    }
}

void ScanView::pick_ring(int number) {
    if (number != picked_ring_) {
        picked_ring_ = number;
        viewport()->update();
    }
}

void ScanView::pick_finding(int number) {
    if (number != picked_finding_) {
        picked_finding_ = number;
        viewport()->update();
    }
}

void ScanView::pick_boundary(std::optional<BoundaryId> id) {
    picked_boundary_ = id;
    viewport()->update();
}

std::optional<ImagePoint> ScanView::cursor() const {
    return last_cursor_;
}

std::optional<BoundaryId> ScanView::under_cursor() const {
    return grip_.under() ? std::optional(grip_.under()->id) : std::nullopt;
}

std::optional<BoundaryId> ScanView::newly_pointed() {
    return std::exchange(moved_, false) ? under_cursor() : std::nullopt;
}

double ScanView::reach_px() const {
    constexpr double reach = 6.0; // view pixels
    return reach / view_.scale();
}

void ScanView::take_tool(std::unique_ptr<Tool> tool, Drawn drawn) {
    if (!tool && !tool_) {
        return;
    }
    tool_ = std::move(tool);
    drawn_ = std::move(drawn);
    viewport()->setCursor(tool_ ? Qt::CrossCursor : Qt::OpenHandCursor);
    emit hint_changed(tool_ ? tool_->hint() : QString());
    emit tool_changed();
    viewport()->update();
}

void ScanView::answer(const ToolAnswer& answer) {
    if (answer.finished) {
        const Drawn drawn = std::move(drawn_);
        take_tool(nullptr);
        if (answer.result && drawn) {
            drawn(answer.result->points);
        }
        return;
    }
    emit hint_changed(tool_->hint());
    viewport()->update();
}

void ScanView::clicked(QPointF at) {
    const ImagePoint place = view_.to_image(at);
    if (tool_) {
        answer(tool_->click(place));
        return;
    }
    if (grip_.under()) {
        emit boundary_clicked(grip_.under()->id);
        return;
    }
    for (const CorePlace& core : model_.cores_on_shown()) {
        const picture::MeasuredCore& one = *model_.core_at(core);
        const auto distance = picture::distance_to_path(one.reading, model_.scan()->opened->name(), place);
        if (distance && *distance <= one.half_breadth_px) {
            emit core_clicked(core);
            return;
        }
    }
}

void ScanView::pointed(QPointF at) {
    const picture::MeasuredCore* core = model_.core();
    int ring = 0;
    const bool inside = viewport()->rect().contains(at.toPoint());
    cursor_ = inside ? std::optional(at) : std::nullopt;
    if (inside) {
        last_cursor_ = view_.to_image(at);
    }
    if (!dragging() && model_.scan() != nullptr) {
        const picture::MeasuredCore* in_reach = inside && !tool_ ? core : nullptr;
        const std::string scan = model_.scan()->opened->name();
        pith_grip_.point(in_reach, scan, view_.to_image(at), reach_px());
        path_grip_.point(pith_grip_.under() ? nullptr : in_reach, scan, view_.to_image(at), reach_px(), bending_);
        if (grip_.point(pith_grip_.under() || path_grip_.under() ? nullptr : in_reach, scan, view_.to_image(at),
                        reach_px())) {
            emit boundary_pointed();
        }
        if (!tool_) {
            const bool something = grip_.under() || path_grip_.under() || pith_grip_.under();
            viewport()->setCursor(something ? Qt::PointingHandCursor : Qt::OpenHandCursor);
        }
    }
    viewport()->update(); // what a click will do stands at the cursor
    if (core != nullptr && !tool_ && viewport()->rect().contains(at.toPoint())) {
        ring = picture::ring_at(*core, model_.scan()->opened->name(), view_.to_image(at), core->half_breadth_px)
                   .value_or(0);
    }
    if (ring != pointed_ring_) {
        pointed_ring_ = ring;
        pick_ring(ring);
        emit ring_pointed(ring);
    }
}

} // namespace pithward::bench
