#include "app/bench/panels/findings_list.h"
#include "app/bench/panels/message_bar.h"
#include "app/bench/scan_view/scan_view.h"
#include "app/bench/window/main_window.h"
#include "app/picture/legs.h"
#include "app/progress/progress_page.h"
#include "app/review/comparison_view.h"
#include "app/review/core_viewer.h"
#include "app/review/history_view.h"
#include "app/review/review_page.h"
#include "app/site/site_page.h"

#include <QLabel>
#include <QStackedWidget>
#include <QTimer>

// How the second person's work is tied to the window: the review, and the history of a core.

namespace pithward::bench {

void MainWindow::bind_review() {
    using enum ActionId;
    actions_.on(ShowBench, [this] { show_front(Front::Bench); });
    actions_.on(ShowReview, [this] { show_front(Front::Review); });
    actions_.on(ShowHistory, [this] { show_history(); });
    actions_.on(CompareReadings, [this] { compare_readings(); });
    actions_.on(PassQueued, [this] { review_->judge(Verdict::Passed); });
    actions_.on(ReturnQueued, [this] { review_->judge(Verdict::Returned); });
    actions_.on(CommentQueued, [this] { review_->focus_comment(); });
    actions_.on(OpenQueued, [this] { front_ == Front::Site ? site_->see_wood() : open_queued(); });
    actions_.on(OtherQueue, [this] {
        show_front(Front::Review);
        review_->show_other_list();
    });
    review_->add_buttons({actions_.at(PassQueued), actions_.at(ReturnQueued), actions_.at(OpenQueued)});
    connect(review_, &ReviewPage::told, messages_, &MessageBar::tell);
    connect(review_, &ReviewPage::shown_changed, this, &MainWindow::refresh);
    connect(&control_.model(), &BenchModel::changed, this, &MainWindow::go_to_goal);
}

void MainWindow::show_front(Front front) {
    front_ = desk_.is_open() ? front : Front::Bench;
    hint_->clear();
    refresh();
    if (front_ == Front::Bench) {
        view_->setFocus();
    }
}

ScanView& MainWindow::view_in_front() {
    return front_ == Front::Review ? review_->viewer().view() : *view_;
}

void MainWindow::open_queued() {
    if (const auto place = review_->place()) {
        goal_ = place->second ? std::optional(Goal{place->first, *place->second}) : std::nullopt;
        open_goal(place->first);
    }
}

void MainWindow::open_goal(ReadingId reading) {
    show_front(Front::Bench);
    desk_.open_reading(reading);
    QTimer::singleShot(0, this, &MainWindow::go_to_goal); // where it is shown already
}

void MainWindow::go_to_goal() {
    const Document* document = control_.model().document();
    if (!goal_ || document == nullptr || !control_.model().home()->recorded ||
        document->reading().id != goal_->reading) {
        return;
    }
    const Goal goal = *goal_;
    if (!goal.seen) {
        const std::size_t leg = picture::leg_at(document->reading(), goal.at);
        if (control_.model().named(picture::scan_of_leg(document->reading(), leg)) == nullptr) {
            return; // the scan that it lies on is still being opened
        }
        goal_->seen = true;
        go_to_leg(leg, [this, at = goal.at] { view_->go_to(at); });
    }
    if (!goal.as_slip || findings_->show_at(goal.at, FindingKind::Slip)) {
        goal_.reset();
    }
}

std::optional<record::CoreId> MainWindow::core_in_front() const {
    if (front_ == Front::Site || front_ == Front::Progress) {
        return front_ == Front::Site ? site_->core() : progress_->core();
    }
    return front_ == Front::Review && review_->shown() ? std::optional(review_->shown()->core.id) : desk_.present();
}

void MainWindow::compare_readings() {
    const auto core = core_in_front();
    if (!core) {
        return;
    }
    if (std::ranges::count(desk_.overview().readings, *core, &record::ReadingEntry::core) < 2) {
        messages_->tell(tr("This core has one reading. Draw a path on it (P), or run pithward measure with its "
                           "name, for another."));
        return;
    }
    auto* comparison = new ComparisonView(desk_, *core, this);
    comparison->setAttribute(Qt::WA_DeleteOnClose);
    connect(comparison, &ComparisonView::told, messages_, &MessageBar::tell);
    comparison->show();
}

void MainWindow::show_history() {
    const auto core = core_in_front();
    if (!core) {
        return;
    }
    auto* history = new HistoryView(desk_, *core, this);
    history->setAttribute(Qt::WA_DeleteOnClose);
    connect(history, &HistoryView::told, messages_, &MessageBar::tell);
    history->show();
}

} // namespace pithward::bench
