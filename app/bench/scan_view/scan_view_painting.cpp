#include "app/bench/look/appearance.h"
#include "app/bench/look/wording.h"
#include "app/bench/scan_view/cursor_chip.h"
#include "app/bench/scan_view/pith_painting.h"
#include "app/bench/scan_view/scan_view.h"
#include "app/picture/mark_shapes.h"
#include "app/picture/path_painting.h"
#include "app/picture/ring_places.h"

#include <QPainter>

// How the scan is painted: the picture, the marks over it, what is in hand, what a click will do.

namespace pithward::bench {

void ScanView::paintEvent(QPaintEvent*) {
    QPainter painter(viewport());
    painter.fillRect(viewport()->rect(), scan_ground(palette()));
    image_.paint(painter, view_, devicePixelRatioF());
    if (!hidden_) {
        draw_marks(painter);
        draw_preview(painter);
        draw_chip(painter);
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
        const std::string name = scan->opened->name();
        for (const CorePlace& place : model_.cores_on_shown()) {
            const picture::MeasuredCore& core = *model_.core_at(place);
            const bool present = &core == model_.core();
            picture::MarkSet marks = picture::visible_marks(core, name, view_, viewport()->rect());
            picture::paint_marks(layer, marks, style, present);
            if (present) {
                picture::paint_bends(layer, core.reading, name, view_, style);
                picture::paint_ways_to_ends(layer, core, name, view_, viewport()->rect(), style);
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
    draw_pith(painter);
    draw_picked_boundaries(painter);
    for (const picture::FindingMark& mark : findings_) {
        if (mark.number == picked_finding_) {
            picture::paint_finding(painter, mark, style);
        }
    }
    picture::paint_drawn_path(painter, path_grip_.preview(), {}, view_, style);
    if (tool_) {
        picture::paint_drawn_path(painter, tool_->preview(), tool_->first_word(), view_, style);
    }
}

void ScanView::draw_pith(QPainter& painter) {
    constexpr double least_gap = 5.0; // view pixels between estimated rings
    const picture::MeasuredCore* core = model_.core();
    if (core == nullptr) {
        return;
    }
    picture::MarksStyle style;
    style.font = font();
    if (const auto centre = pith_grip_.centre(*core)) {
        paint_pith_preview(painter, circles_about(*core, *centre), *centre, view_, style);
    } else if (const auto shape = pith_shape(*core, model_.scan()->opened->name(), least_gap / view_.scale())) {
        paint_pith_shape(painter, *shape, pith_in_short(*core->reading.pith), view_, style);
    }
}

void ScanView::draw_picked_boundaries(QPainter& painter) {
    const picture::MeasuredCore* core = model_.core();
    if (core == nullptr) {
        return;
    }
    picture::MarksStyle style;
    style.font = font();
    const std::string scan = model_.scan()->opened->name();
    const auto paint = [&](const Boundary& boundary) {
        if (boundary.leg < core->reading.path.legs.size() && core->reading.path.legs[boundary.leg].scan == scan) {
            picture::paint_boundary_in_hand(painter, picture::boundary_mark(boundary, *core, view_),
                                            view_.to_view(boundary.at), style);
        }
    };
    if (const auto moved = grip_.preview(*core, scan)) {
        paint(*moved);
    } else if (const Boundary* picked =
                   picked_boundary_ ? picture::boundary_of(core->reading, *picked_boundary_) : nullptr) {
        paint(*picked);
    }
}

void ScanView::draw_chip(QPainter& painter) {
    if (cursor_ && (!press_ || dragging())) {
        const QString grip = pith_grip_.under()   ? pith_grip_.hint()
                             : path_grip_.under() ? path_grip_.hint()
                                                  : grip_.hint();
        const QString text = tool_ ? tool_->hint() : grip;
        paint_cursor_chip(painter, *cursor_, tool_ ? text.section(". ", 0, 0) : text, palette(), viewport()->rect());
    }
}

} // namespace pithward::bench
