#include "app/bench/panels/resolution_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>

namespace pithward::bench {

ResolutionBar::ResolutionBar(const BenchModel& model, QWidget* parent)
    : QFrame(parent)
    , model_(model)
    , question_(new QLabel)
    , dpi_(new QSpinBox) {
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::ToolTipBase);
    question_->setWordWrap(true);
    question_->setForegroundRole(QPalette::ToolTipText);
    question_->setBuddy(dpi_);
    dpi_->setRange(static_cast<int>(Calibration::least_dpi), static_cast<int>(Calibration::greatest_dpi));
    dpi_->setValue(1200);
    dpi_->setSingleStep(100);
    dpi_->setSuffix(tr(" dpi"));
    dpi_->setAccessibleName(tr("Resolution of the scan in dots per inch"));
    auto* use = new QPushButton(tr("Use this resolution"));
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(14, 8, 14, 8);
    layout->addWidget(question_, 1);
    layout->addWidget(dpi_);
    layout->addWidget(use);
    connect(use, &QPushButton::clicked, this, [this] { emit dpi_given(dpi_->value()); });
    connect(dpi_, &QSpinBox::editingFinished, this, [this, use] {
        if (dpi_->hasFocus()) { // Enter in the field
            use->click();
        }
    });
    connect(&model_, &BenchModel::changed, this, &ResolutionBar::refresh);
    hide();
}

void ResolutionBar::refresh() {
    const BenchScan* scan = model_.scan();
    const bool ask = scan != nullptr && !scan->calibration;
    if (ask && asked_for_ != scan->id) {
        const auto& tag = scan->opened->header.tag_dpi_x;
        const QString file = QString::fromStdString(scan->opened->name());
        question_->setText(
            tag ? tr("%1 says %2 dpi, which programs write when they do not know. At what resolution was it scanned?")
                      .arg(file)
                      .arg(*tag, 0, 'f', 0)
                : tr("%1 does not say its resolution. At what resolution was it scanned?").arg(file));
        dpi_->setFocus();
        dpi_->selectAll();
        asked_for_ = scan->id;
    }
    setVisible(ask && !model_.only_seen());
    if (!ask) {
        asked_for_ = 0;
    }
}

} // namespace pithward::bench
