#include "app/bench/panels/progress_line.h"

#include "app/bench/control/time_left.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <cmath>

namespace pithward::bench {

namespace {

QString in_words_of_time(double seconds) {
    constexpr double minute = 60.0;
    return seconds < minute
               ? ProgressLine::tr("about %n s left", nullptr, std::max(1, static_cast<int>(seconds)))
               : ProgressLine::tr("about %n min left", nullptr, static_cast<int>(std::lround(seconds / minute)));
}

} // namespace

ProgressLine::ProgressLine(const ScanJobs& jobs, QAction* cancel, QWidget* parent)
    : QWidget(parent)
    , title_(new QLabel)
    , bar_(new QProgressBar)
    , left_(new QLabel) {
    constexpr int steps = 100;
    bar_->setRange(0, steps);
    bar_->setFixedWidth(180);
    bar_->setAccessibleName(tr("Progress"));
    auto* stop = new QPushButton(tr("Stop"));
    stop->setToolTip(cancel->toolTip());
    connect(stop, &QPushButton::clicked, cancel, &QAction::trigger);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(title_);
    layout->addWidget(bar_);
    layout->addWidget(left_);
    layout->addWidget(stop);
    connect(&jobs, &ScanJobs::started, this, &ProgressLine::begin);
    connect(&jobs, &ScanJobs::progressed, this, &ProgressLine::show_done);
    connect(&jobs, &ScanJobs::finished, this, &QWidget::hide);
    hide();
}

void ProgressLine::begin(const QString& title) {
    title_->setText(title);
    bar_->setValue(0);
    left_->clear();
    since_.start();
    show();
}

void ProgressLine::show_done(double done) {
    bar_->setValue(static_cast<int>(done * bar_->maximum()));
    const auto left = seconds_left(static_cast<double>(since_.elapsed()) / 1000.0, done);
    left_->setText(left ? in_words_of_time(*left) : QString());
}

} // namespace pithward::bench
