#include "app/bench/lanes/series_plot.h"
#include "app/bench/panels/findings_list.h"
#include "app/bench/panels/message_bar.h"
#include "app/bench/scan_view/scan_view.h"
#include "app/bench/window/main_window.h"
#include "app/site/site_page.h"

#include <QLabel>

// How the site's page is tied to the window. It has keys in common with the bench, for what is the same there.

namespace pithward::bench {

namespace {

std::vector<KeptSeries> kept_series(const SiteCores& cores) {
    std::vector<KeptSeries> kept;
    for (const auto& core : cores.cores) {
        kept.push_back({core->reading.id, core->reading.core, core->site, core->tree, {core, &core->series}});
    }
    return kept;
}

} // namespace

void MainWindow::bind_site() {
    using enum ActionId;
    actions_.on(ShowSite, [this] { show_front(Front::Site); });
    site_->add_buttons(actions_.at(OpenQueued), actions_.at(TakeProposal), actions_.at(KeepAsItIs),
                       actions_.at(CannotBeTold));
    connect(site_, &SitePage::told, messages_, &MessageBar::tell);
    connect(&desk_, &ProjectDesk::opened, this, [this] { plot_->show_kept({}); });
    connect(&desk_, &ProjectDesk::overview_changed, site_, &SitePage::look);
    connect(&site_->work(), &SiteWork::seen, this,
            [this](const SiteCores& cores) { plot_->show_kept(kept_series(cores)); });
    connect(site_, &SitePage::shown_changed, this, &MainWindow::refresh);
    connect(site_, &SitePage::hint, this, [this](const QString& words) {
        if (front_ == Front::Site) {
            hint_->setText(words);
        }
    });
    connect(site_, &SitePage::bench_wanted, this, [this](ReadingId reading, ImagePoint at, bool as_slip) {
        goal_ = Goal{reading, at, as_slip};
        open_goal(reading);
    });
}

BenchState MainWindow::site_state() const {
    const bool chosen = site_->core().has_value();
    return {.finding = site_->change_shown() && !site_->busy(),
            .work = site_->busy() || control_.jobs().busy() || errand_.busy(),
            .project = true,
            .recorded = chosen,
            .picture = site_->has_dating(),
            .place = chosen,
            .only_seen = !desk_.overview().can_change};
}

void MainWindow::zoom_in_front(double factor) {
    if (front_ == Front::Site) {
        site_->zoom(factor);
    } else {
        view_in_front().zoom(factor);
    }
}

void MainWindow::show_all_in_front() {
    if (front_ == Front::Site) {
        site_->show_all_years();
    } else {
        view_in_front().show_all();
    }
}

void MainWindow::step_finding(int by) {
    if (front_ == Front::Site) {
        site_->step(by);
    } else {
        findings_->step(by);
    }
}

void MainWindow::stop_work() {
    control_.jobs().cancel();
    site_->cancel();
    errand_.cancel();
}

} // namespace pithward::bench
