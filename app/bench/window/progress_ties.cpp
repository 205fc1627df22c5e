#include "app/bench/panels/message_bar.h"
#include "app/bench/window/main_window.h"
#include "app/progress/progress_page.h"
#include "app/review/review_page.h"
#include "app/site/site_page.h"

// How the page of progress is tied to the window: each step leads to where it is done.

namespace pithward::bench {

void MainWindow::bind_progress() {
    actions_.on(ActionId::ShowProgress, [this] { show_front(Front::Progress); });
    progress_->add_buttons({actions_.at(ActionId::WriteReport), actions_.at(ActionId::WritePackage)});
    connect(progress_, &ProgressPage::told, messages_, &MessageBar::tell);
    connect(progress_, &ProgressPage::shown_changed, this, &MainWindow::refresh);
    connect(progress_, &ProgressPage::step_wanted, this, &MainWindow::take_step);
    connect(&site_->work(), &SiteWork::changed, this, &MainWindow::refresh);
}

BenchState MainWindow::progress_state() const {
    return {.work = site_->busy() || control_.jobs().busy() || errand_.busy(),
            .project = true,
            .recorded = progress_->core().has_value(),
            .only_seen = !desk_.overview().can_change};
}

void MainWindow::take_step(progress::Step step, std::optional<record::CoreId> core) {
    using progress::Step;
    if (!core) {
        actions_.at(step == Step::Measure ? ActionId::MeasureAll : ActionId::WriteReport)->trigger();
        return;
    }
    if (step == Step::Date) {
        site_->choose(*core);
        show_front(Front::Site);
        return;
    }
    const record::ReadingEntry* reading = accepted_of(desk_.overview(), *core);
    if (step == Step::Review && reading != nullptr) {
        show_front(Front::Review);
        review_->choose(reading->id);
        return;
    }
    open_for_work(*core);
}

void MainWindow::open_for_work(record::CoreId core) {
    const record::CoreEntry* entry = core_of(desk_.overview(), core);
    if (entry == nullptr || entry->core.scan.empty()) {
        desk_.open_core(core); // tells what is missing
        return;
    }
    if (const auto place = progress_->first_finding(core)) {
        goal_ = Goal{place->first, place->second};
        open_goal(place->first);
        return;
    }
    show_front(Front::Bench);
    desk_.open_core(core);
}

} // namespace pithward::bench
