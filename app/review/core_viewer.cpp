#include "app/review/core_viewer.h"

#include "app/bench/lanes/strip_lane.h"
#include "app/bench/scan_view/scan_view.h"
#include "app/picture/seen_stretch.h"

#include <QSplitter>
#include <QVBoxLayout>
#include <cmath>
#include <utility>

namespace pithward::bench {

CoreViewer::CoreViewer(QWidget* parent)
    : QWidget(parent)
    , view_(new ScanView(model_))
    , strip_(new StripLane(model_)) {
    auto* parts = new QSplitter(Qt::Vertical);
    parts->addWidget(view_);
    parts->addWidget(strip_);
    parts->setStretchFactor(0, 5);
    parts->setStretchFactor(1, 2);
    parts->setChildrenCollapsible(false);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(parts);
    connect(view_, &ScanView::view_changed, this, &CoreViewer::follow_view);
    connect(&model_, &BenchModel::changed, this, &CoreViewer::follow); // after the view has it
    connect(view_, &ScanView::ring_pointed, strip_, &StripLane::pick_ring);
    connect(strip_, &StripLane::ring_pointed, view_, &ScanView::pick_ring);
}

bool CoreViewer::show_reading(const std::shared_ptr<const OpenedScan>& scan, const Reading& reading,
                              const Finding* at) {
    auto document = Document::open(reading);
    if (!document) {
        return false;
    }
    const BenchScan* shown = model_.find(scan_);
    const bool same =
        shown != nullptr && shown->opened->path == scan->path && shown->documents.front().reading().id == reading.id;
    if (!same) {
        show_nothing();
        const auto scale = reading.calibrations.find(scan->name());
        scan_ = model_.add_scan(
            *scan, scale != reading.calibrations.end() ? std::optional(scale->second) : std::nullopt, true);
    }
    if (!model_.put_reading(scan_, std::move(*document))) {
        show_nothing();
        return false;
    }
    model_.show_scan(scan_);
    to_place_ = !same || at != nullptr;
    at_ = at != nullptr ? std::optional(*at) : std::nullopt;
    return true;
}

void CoreViewer::show_nothing() {
    if (scan_ != 0) {
        model_.remove_scan(scan_);
        scan_ = 0;
    }
}

void CoreViewer::level(const Leg& leg) {
    if (leg.points.size() > 1) {
        view_->level(leg.points.front(), leg.points.back());
    }
}

void CoreViewer::show_place() {
    const picture::MeasuredCore* core = model_.core();
    if (core == nullptr || core->reading.path.legs.empty()) {
        return;
    }
    const auto& legs = core->reading.path.legs;
    level(at_ && at_->leg < legs.size() ? legs[at_->leg] : legs.front());
    if (at_) {
        view_->go_to(at_->to ? (at_->at + *at_->to) * 0.5 : at_->at);
        view_->pick_finding(1);
    } else {
        view_->show_all();
    }
    view_->pick_boundary(at_ ? at_->boundary : std::nullopt);
}

void CoreViewer::follow() {
    if (model_.core() != nullptr && std::exchange(to_place_, false)) {
        show_place();
    }
    follow_view();
}

void CoreViewer::follow_view() {
    if (const picture::MeasuredCore* core = model_.core()) {
        strip_->show_stretch(picture::seen_stretch(core->reading, model_.scan()->opened->name(), view_->view()),
                             view_->viewport()->width());
    }
}

} // namespace pithward::bench
