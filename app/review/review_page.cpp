#include "app/review/review_page.h"

#include "app/bench/look/wording.h"
#include "app/picture/ring_places.h"
#include "app/review/core_viewer.h"
#include "app/review/finding_words.h"
#include "app/review/neighbour_years.h"
#include "libcore/review/verdicts.h"

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <utility>

// What the review shows, and what a verdict does.

namespace pithward::bench {

namespace {

/// A reading of which one finding alone is marked on the scan.
Reading with_one_finding(Reading reading, const Finding* shown) {
    std::vector<Finding> one;
    if (shown != nullptr) {
        one.push_back(*shown);
        one.front().state = Finding::State::Open; // only open ones are drawn
    }
    reading.findings = std::move(one);
    return reading;
}

/// The ring in question: the one that the finding's boundary closes, else the one that it lies in.
int ring_in_question(const ReviewCase& one, const Finding& finding) {
    const auto& placed = one.measured.series.boundaries;
    const auto boundary =
        finding.boundary ? std::ranges::find(placed, *finding.boundary, &PlacedBoundary::id) : placed.end();
    if (boundary != placed.end()) {
        return boundary->ring_number;
    }
    constexpr double near_enough_px = 1e3;
    const auto& legs = one.reading().path.legs;
    const std::string scan = finding.leg < legs.size() ? legs[finding.leg].scan : std::string();
    return picture::ring_at(one.measured, scan, finding.at, near_enough_px).value_or(1);
}

} // namespace

void ReviewPage::refresh() {
    if (!isVisible() || !desk_.is_open()) {
        return;
    }
    comment_->setEnabled(desk_.overview().can_change);
    using Items = std::vector<QueueItem>;
    desk_.store().ask<Items>(
        [shelf = shelf_, whom = whom_](record::Project& project) { return read_queue(project, *shelf, whom); },
        [this, whom = whom_](Outcome<Items> items) {
            if (!items) {
                tell(items.error());
            } else if (whom == whom_) {
                put_items(std::move(*items));
            }
        });
}

void ReviewPage::show_row(int row) {
    if (row < 0 || row >= static_cast<int>(items_.size())) {
        show_nothing();
        return;
    }
    const QueueItem& item = items_[static_cast<std::size_t>(row)];
    item_ = item;
    case_.reset();
    emit shown_changed();
    desk_.store().ask<ReviewCase>([item](record::Project& project) { return read_case(project, item); },
                                  [this, item, number = ++asked_](Outcome<ReviewCase> one) {
                                      if (number != asked_) {
                                          return;
                                      }
                                      if (one) {
                                          show_case(item, std::move(*one));
                                      } else {
                                          tell(one.error());
                                      }
                                  });
}

void ReviewPage::show_case(const QueueItem& item, ReviewCase one) {
    case_ = std::move(one);
    const Finding* finding = case_->finding(item);
    const int ring = finding != nullptr ? ring_in_question(*case_, *finding) : 0;
    const Ring* about = picture::ring_of(case_->measured.series, ring);
    title_->setText(about != nullptr ? QString("%1 · %2").arg(title_of(item), name_of(*about)) : title_of(item));
    provenance_->setText(provenance_of(*case_));
    story_->setText(finding != nullptr ? story_of(*case_, *finding) : summary_of(item));
    show_years(item);
    show_wood(item);
    emit shown_changed();
}

void ReviewPage::show_wood(const QueueItem& item) {
    scans_.fetch(case_->core, [this, item](const ScanFetcher::Opened& scan) {
        if (!case_ || !item_ || !same_item(*item_, item)) {
            return;
        }
        const Finding* finding = case_->finding(item);
        if (!scan) {
            viewer_->show_nothing();
            tell(scan.error());
        } else if (!viewer_->show_reading(*scan, with_one_finding(case_->reading(), finding), finding)) {
            emit told(tr("This reading can't be shown."));
        }
    });
}

void ReviewPage::show_years(const QueueItem& item) {
    const Finding* finding = case_->finding(item);
    if (finding == nullptr) {
        years_->show_nothing();
        return;
    }
    std::vector<std::pair<QString, const RingSeries*>> others;
    others.reserve(case_->siblings.size());
    for (const ReviewCase::Sibling& sibling : case_->siblings) {
        others.emplace_back(QString::fromStdString(sibling.core), &sibling.series);
    }
    years_->show_about(QString::fromStdString(case_->core.core.id), case_->measured, ring_in_question(*case_, *finding),
                       others);
}

void ReviewPage::show_nothing() {
    ++asked_;
    item_.reset();
    case_.reset();
    viewer_->show_nothing();
    years_->show_nothing();
    title_->setText(whom_ == Waits::SecondPerson ? tr("Nothing waits for a second person")
                                                 : tr("Nothing waits for the analysts"));
    provenance_->setText(whom_ == Waits::SecondPerson
                             ? tr("A reading comes here when its analyst says that it is done (W on the bench).")
                             : QString());
    story_->clear();
    emit shown_changed();
}

void ReviewPage::judge(Verdict verdict) {
    if (!can_judge()) {
        return;
    }
    const QueueItem item = *item_;
    const auto build = [item, verdict, comment = comment_->text().trimmed().toStdString(), who = desk_.stamp().who,
                        seen = case_->document.revision()](const Document& document) -> Outcome<Edit> {
        if (document.revision() != seen) {
            return fail(item.core, "this reading was changed since it was shown", "look at it again, then judge it");
        }
        if (item.finding) {
            auto own = review::fault_of_own_work(document.reading(), document.log(), who);
            if (own && verdict == Verdict::Passed) {
                return tl::unexpected(std::move(*own));
            }
            return review::judge(document.reading(), *item.finding, verdict, comment);
        }
        return verdict == Verdict::Passed ? review::pass(document.reading(), document.log(), who)
                                          : review::send_back(document.reading());
    };
    case_.reset(); // nothing is judged twice
    emit shown_changed();
    desk_.make(item.reading, build, [this](bool done) {
        if (done) {
            comment_->clear();
            list_->setFocus();
        } else {
            show_row(list_->currentRow());
        }
        refresh();
    });
}

std::optional<std::pair<ReadingId, std::optional<ImagePoint>>> ReviewPage::place() const {
    if (!item_ || !case_) {
        return std::nullopt;
    }
    const Finding* finding = case_->finding(*item_);
    return std::pair(item_->reading, finding != nullptr ? std::optional(finding->at) : std::nullopt);
}

QString ReviewPage::story() const {
    return story_->text();
}

void ReviewPage::tell(const Fault& fault) {
    emit told(QString::fromStdString(fault.line()));
}

} // namespace pithward::bench
