#include "app/bench/panels/progress_line.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>

namespace pithward::bench {

ProgressLine::ProgressLine(const ScanJobs& jobs, QAction* cancel, QWidget* parent)
    : QWidget(parent)
    , title_(new QLabel)
    , bar_(new QProgressBar) {
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
    layout->addWidget(stop);
    connect(&jobs, &ScanJobs::started, this, [this](const QString& title) {
        title_->setText(title);
        bar_->setValue(0);
        show();
    });
    connect(&jobs, &ScanJobs::progressed, this,
            [this](double done) { bar_->setValue(static_cast<int>(done * steps)); });
    connect(&jobs, &ScanJobs::finished, this, &QWidget::hide);
    hide();
}

} // namespace pithward::bench
