#include "app/bench/scan_view.h"

#include "app/bench/appearance.h"
#include "app/bench/wording.h"
#include "app/picture/polyline.h"
#include "app/picture/ring_places.h"

#include <QApplication>
#include <QPainter>
#include <QScrollBar>
#include <algorithm>
#include <cmath>

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

void ScanView::go_to(ImagePoint at) {
    constexpr double close_px_per_mm = 60.0;
    const BenchScan* scan = model_.scan();
    const double close = scan != nullptr && scan->calibration ? close_px_per_mm / scan->calibration->px_per_mm() : 1.0;
    set_view(view_.scaled_to(std::max(view_.scale(), close)).centred(at));
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

void ScanView::take_tool(std::unique_ptr<Tool> tool) {
    if (!tool && !tool_) {
        return;
    }
    tool_ = std::move(tool);
    viewport()->setCursor(tool_ ? Qt::CrossCursor : Qt::OpenHandCursor);
    emit hint_changed(tool_ ? tool_->hint() : QString());
    emit tool_changed();
    viewport()->update();
}

void ScanView::answer(const ToolAnswer& answer) {
    if (answer.finished) {
        take_tool(nullptr);
        if (answer.result) {
            emit path_drawn(answer.result->points);
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
    const BenchScan* scan = model_.scan();
    for (std::size_t i = 0; scan != nullptr && i < scan->cores.size(); ++i) {
        const auto distance = picture::distance_to_path(scan->cores[i].reading, scan->opened->name(), place);
        if (distance && *distance <= scan->cores[i].half_breadth_px) {
            emit core_clicked(static_cast<int>(i));
            return;
        }
    }
}

void ScanView::pointed(QPointF at) {
    const picture::MeasuredCore* core = model_.core();
    int ring = 0;
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

void ScanView::paintEvent(QPaintEvent*) {
    QPainter painter(viewport());
    painter.fillRect(viewport()->rect(), scan_ground(palette()));
    image_.paint(painter, view_, devicePixelRatioF());
    if (!hidden_) {
        draw_marks(painter);
        draw_preview(painter);
    }
    if (hasFocus()) {
        painter.setRenderHint(QPainter::Antialiasing, false);
        painter.setPen(palette().color(QPalette::Link));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(viewport()->rect().adjusted(0, 0, -1, -1));
    }
}

void ScanView::refresh_marks() {
    marks_fresh_ = false;
    viewport()->update();
}

void ScanView::draw_marks(QPainter& painter) {
    const BenchScan* scan = model_.scan();
    if (scan == nullptr) {
        return;
    }
    if (!marks_fresh_) {
        const double ratio = devicePixelRatioF();
        const QSize size = viewport()->size() * ratio;
        if (marks_.size() != size) {
            marks_ = QPixmap(size);
        }
        marks_.setDevicePixelRatio(ratio);
        marks_.fill(Qt::transparent);
        QPainter layer(&marks_);
        picture::MarksStyle style;
        style.font = font();
        findings_.clear();
        for (std::size_t i = 0; i < scan->cores.size(); ++i) {
            const bool present = static_cast<int>(i) == model_.core_index();
            picture::MarkSet marks =
                picture::visible_marks(scan->cores[i], scan->opened->name(), view_, viewport()->rect());
            picture::paint_marks(layer, marks, style, present);
            if (present) {
                findings_ = std::move(marks.findings);
            }
        }
        marks_fresh_ = true;
    }
    painter.drawPixmap(0, 0, marks_);
}

void ScanView::draw_preview(QPainter& painter) {
    picture::MarksStyle style;
    style.font = font();
    const picture::MeasuredCore* core = model_.core();
    if (core != nullptr && picked_ring_ != 0) {
        const Ring* ring = picture::ring_of(core->series, picked_ring_);
        const auto mark = picture::ring_mark(*core, model_.scan()->opened->name(), view_, picked_ring_);
        if (ring != nullptr && mark) {
            picture::paint_ring(painter, *mark, ring_in_short(*ring), style);
        }
    }
    for (const picture::FindingMark& mark : findings_) {
        if (mark.number == picked_finding_) {
            picture::paint_finding(painter, mark, style);
        }
    }
    if (tool_) {
        picture::paint_drawn_path(painter, tool_->preview(), tool_->from_bark(), view_, style);
    }
}

} // namespace pithward::bench
