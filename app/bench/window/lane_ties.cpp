#include "app/bench/lanes/series_plot.h"
#include "app/bench/lanes/strip_lane.h"
#include "app/bench/look/wording.h"
#include "app/bench/panels/message_bar.h"
#include "app/bench/scan_view/scan_view.h"
#include "app/bench/window/main_window.h"
#include "app/picture/legs.h"
#include "app/picture/ring_places.h"

#include <QLabel>

// How the scan, the strip with its light profile, and the widths by year are tied: what is pointed at in one is marked
// in all, and the strip shows what the scan shows.

namespace pithward::bench {

void MainWindow::tie_lanes() {
    connect(view_, &ScanView::view_changed, this, &MainWindow::follow_view);
    connect(&control_.model(), &BenchModel::changed, this, &MainWindow::follow_view);
    connect(view_, &ScanView::ring_pointed, plot_, &SeriesPlot::pick_ring);
    connect(view_, &ScanView::ring_pointed, strip_, &StripLane::pick_ring);
    connect(strip_, &StripLane::ring_pointed, view_, &ScanView::pick_ring);
    connect(strip_, &StripLane::ring_pointed, plot_, &SeriesPlot::pick_ring);
    connect(plot_, &SeriesPlot::ring_pointed, view_, &ScanView::pick_ring);
    connect(plot_, &SeriesPlot::ring_pointed, strip_, &StripLane::pick_ring);
    connect(view_, &ScanView::ring_pointed, this, &MainWindow::point_at_ring);
    connect(strip_, &StripLane::ring_pointed, this, &MainWindow::point_at_ring);
    connect(plot_, &SeriesPlot::ring_pointed, this, &MainWindow::point_at_ring);
    connect(&control_.model(), &BenchModel::changed, this, [this](BenchModel::Changes changes) {
        if (changes & BenchModel::ShownScan) { // the view has turned to it by now
            if (const auto there = std::exchange(when_shown_, nullptr)) {
                there();
            }
        }
    });
    connect(strip_, &StripLane::ring_chosen, this, &MainWindow::go_to_ring);
    connect(plot_, &SeriesPlot::ring_chosen, this, &MainWindow::go_to_ring);
}

void MainWindow::follow_view() {
    zoom_->setText(control_.model().scan() == nullptr ? QString()
                                                      : tr("%1 %").arg(view_->view().scale() * 100.0, 0, 'f', 0));
    if (const picture::MeasuredCore* core = control_.model().core()) {
        strip_->show_stretch(
            picture::seen_stretch(core->reading, control_.model().scan()->opened->name(), view_->view()),
            view_->viewport()->width());
    }
}

void MainWindow::go_to_ring(int number) {
    const picture::MeasuredCore* core = control_.model().core();
    if (core == nullptr) {
        return;
    }
    const auto leg = picture::leg_of_ring(*core, number);
    if (!leg) {
        return;
    }
    go_to_leg(*leg, [this, number] {
        const picture::MeasuredCore* here = control_.model().core();
        const BenchScan* scan = control_.model().scan();
        const auto place = here != nullptr ? picture::place_of_ring(*here, scan->opened->name(), number) : std::nullopt;
        if (place) {
            view_->go_to(*place);
            view_->pick_ring(number);
            point_at_ring(number);
        }
    });
}

void MainWindow::go_to_leg(std::size_t leg, std::function<void()> there) {
    const picture::MeasuredCore* core = control_.model().core();
    const BenchScan* shown = control_.model().scan();
    const std::string name = core != nullptr ? picture::scan_of_leg(core->reading, leg) : std::string();
    if (shown == nullptr || name.empty()) {
        return;
    }
    const BenchScan* wanted = control_.model().named(name);
    if (wanted == nullptr) {
        messages_->tell(tr("This part of the core lies on %1, which is not on the bench. Open it (Ctrl+O).")
                            .arg(QString::fromStdString(name)));
    } else if (wanted->id == shown->id) {
        there();
    } else {
        when_shown_ = std::move(there);
        control_.show_scan(wanted->id);
    }
}

void MainWindow::point_at_ring(int number) {
    const picture::MeasuredCore* core = control_.model().core();
    const Ring* ring = core != nullptr ? picture::ring_of(core->series, number) : nullptr;
    hint_->setText(ring != nullptr ? ring_in_full(*ring) : QString());
}

} // namespace pithward::bench
