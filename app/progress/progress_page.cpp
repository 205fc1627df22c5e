#include "app/progress/progress_page.h"

#include "app/progress/progress_words.h"
#include "app/progress/stage_bars.h"
#include "app/progress/strip_shelf.h"
#include "libcore/record/scans_in_place.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSortFilterProxyModel>
#include <QStackedWidget>
#include <QTableView>
#include <algorithm>

// What the page of progress shows, and where it leads.

namespace pithward::bench {

void ProgressPage::start_anew() {
    ++asked_;
    seen_ = {};
    scans_there_.clear();
    core_.reset();
    refresh();
}

void ProgressPage::refresh() {
    if (isVisible() && desk_.is_open()) {
        put_rows();
        look_for_scans();
        dating_.refresh();
    }
}

void ProgressPage::look_for_scans() {
    using Names = std::set<std::string>;
    desk_.store().ask<Names>(
        [cores = desk_.overview().cores](record::Project& project) -> Outcome<Names> {
            return record::scans_in_place(project.folder(), cores);
        },
        [this, number = ++asked_](Outcome<Names> names) {
            if (number != asked_) {
                return;
            }
            if (!names) {
                emit told(QString::fromStdString(names.error().line()));
            } else if (scans_there_ != *names) {
                scans_there_ = std::move(*names);
                put_rows();
            }
        });
}

void ProgressPage::put_rows() {
    if (!isVisible()) {
        return;
    }
    const auto chosen = core_;
    model_.put(progress_rows(desk_.overview(), seen_, dating_.dating().get(), scans_there_));
    std::vector<progress::CoreProgress> cores;
    for (const ProgressRow& row : model_.rows()) {
        cores.push_back(row.progress);
    }
    site_ = progress::site_progress(cores);
    bars_->show_site(site_);
    next_->setText(next_of_site(site_, model_.rows()));
    site_button_->setText(button_of_site(site_));
    site_button_->setEnabled(site_.first.has_value());
    work_->setText(dating_.busy() ? tr("Dating the site…") : QString());
    pages_->setCurrentIndex(model_.rows().empty() ? 0 : 1);
    int place = model_.rows().empty() ? -1 : 0;
    for (std::size_t i = 0; chosen && i < model_.rows().size(); ++i) {
        place = model_.rows()[i].core.id == *chosen ? static_cast<int>(i) : place;
    }
    if (place >= 0 && (!table_->currentIndex().isValid() || core() != chosen)) {
        table_->setCurrentIndex(sorted_->mapFromSource(model_.index(place, ProgressModel::Name)));
    }
    show_core();
}

const ProgressRow* ProgressPage::row_at(const QModelIndex& shown) const {
    const QModelIndex index = sorted_->mapToSource(shown);
    return index.isValid() && index.row() < model_.rowCount() ? &model_.rows()[static_cast<std::size_t>(index.row())]
                                                              : nullptr;
}

QImage ProgressPage::picture_of(const ProgressRow& row, QSize pixels) const {
    const bool known = row.read || !row.reading; // else its path is on its way
    return known ? strips_->strip(row.core, row.read, pixels) : QImage();
}

QImage ProgressPage::picture(record::CoreId core) const {
    constexpr QSize usual(240, 28);
    const auto row = std::ranges::find(model_.rows(), core, [](const ProgressRow& one) { return one.core.id; });
    return row != model_.rows().end() ? picture_of(*row, usual) : QImage();
}

std::optional<record::CoreId> ProgressPage::core() const {
    const ProgressRow* row = row_at(table_->currentIndex());
    return row != nullptr ? std::optional(row->core.id) : std::nullopt;
}

std::optional<std::pair<ReadingId, ImagePoint>> ProgressPage::first_finding(record::CoreId core) const {
    const auto row = std::ranges::find(model_.rows(), core, [](const ProgressRow& one) { return one.core.id; });
    if (row == model_.rows().end() || !row->read) {
        return std::nullopt;
    }
    const auto& findings = row->read->reading.findings;
    const auto open = std::ranges::find(findings, Finding::State::Open, &Finding::state);
    return open == findings.end() ? std::nullopt : std::optional(std::pair(row->read->reading.id, open->at));
}

void ProgressPage::show_core() {
    const ProgressRow* row = row_at(table_->currentIndex());
    core_button_->setEnabled(row != nullptr);
    if (row == nullptr) {
        title_->clear();
        story_->clear();
        return;
    }
    core_ = row->core.id;
    title_->setText(QString::fromStdString(row->core.core.id));
    story_->setText(against_in_full(*row));
    const bool done = row->progress.next == progress::Step::Report;
    core_button_->setText(tr("%1 (Return)").arg(done ? tr("See it on the bench") : words_of(row->progress.next)));
    emit shown_changed();
}

void ProgressPage::go_on_with_core() {
    if (const ProgressRow* row = row_at(table_->currentIndex())) {
        emit step_wanted(row->progress.next, row->core.id);
    }
}

void ProgressPage::go_on_with_site() {
    if (!site_.first) {
        return;
    }
    const bool all = site_.next == progress::Step::Measure || site_.next == progress::Step::Report;
    emit step_wanted(site_.next, all ? std::nullopt : std::optional(model_.rows()[*site_.first].core.id));
}

void ProgressPage::sort() {
    const int column = order_->currentData().toInt();
    const Qt::SortOrder way = reversed_->isChecked() ? Qt::DescendingOrder : Qt::AscendingOrder;
    table_->horizontalHeader()->setSortIndicator(column, way); // which sorts
    reversed_->setEnabled(column >= 0);
    table_->scrollTo(table_->currentIndex());
}

void ProgressPage::follow_sorting(int column, Qt::SortOrder order) {
    const QSignalBlocker quiet(order_);
    const QSignalBlocker quiet_too(reversed_);
    order_->setCurrentIndex(std::max(0, order_->findData(column)));
    reversed_->setChecked(order == Qt::DescendingOrder);
    reversed_->setEnabled(column >= 0);
}

QString ProgressPage::story() const {
    return story_->text();
}

void ProgressPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refresh();
    table_->setFocus();
}

void ProgressPage::hideEvent(QHideEvent* event) {
    strips_->stop();
    QWidget::hideEvent(event);
}

} // namespace pithward::bench
