#include "app/bench/panels/pith_panel.h"

#include "app/bench/look/sentences.h"
#include "app/bench/look/wording.h"
#include "libcore/measure/age.h"

#include <QFormLayout>
#include <QLabel>
#include <algorithm>

namespace pithward::bench {

namespace {

QLabel* selectable_label(const QString& name) {
    auto* label = new QLabel;
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    label->setWordWrap(true);
    label->setAccessibleName(name);
    return label;
}

/// Why a reading has no pith, as its finding says.
QString why_none(const Reading& reading) {
    const auto finding = std::ranges::find(reading.findings, FindingKind::Pith, &Finding::kind);
    return finding == reading.findings.end() ? QString() : in_window_language(finding->reason);
}

QString none_in_words(const Pith& pith) {
    return pith.missing_high == 0 ? PithPanel::tr("none, it is on the core")
                                  : PithPanel::tr("none, it is on the core (at most %1)").arg(pith.missing_high);
}

} // namespace

PithPanel::PithPanel(const BenchModel& model, QWidget* parent)
    : QWidget(parent)
    , model_(model)
    , rings_(selectable_label(tr("Rings to the pith")))
    , distance_(selectable_label(tr("Distance to the pith")))
    , year_(selectable_label(tr("Year of the pith")))
    , others_(selectable_label(tr("Other methods"))) {
    auto* form = new QFormLayout(this);
    form->setContentsMargins(12, 4, 12, 8);
    form->setVerticalSpacing(4);
    form->setLabelAlignment(Qt::AlignLeft | Qt::AlignTop);
    form->addRow(tr("Rings to it"), rings_);
    form->addRow(tr("Distance"), distance_);
    form->addRow(tr("Its year"), year_);
    form->addRow(others_);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    setToolTip(tr("Intervals are 90 %. The year is that at the height of the core."));
    connect(&model_, &BenchModel::changed, this, &PithPanel::refresh);
    refresh();
}

void PithPanel::refresh() {
    const picture::MeasuredCore* core = model_.core();
    for (QLabel* label : {rings_, distance_, year_, others_}) {
        label->clear();
    }
    if (core == nullptr) {
        return;
    }
    const auto& pith = core->reading.pith;
    if (!pith) {
        rings_->setText(tr("not told"));
        others_->setText(why_none(core->reading));
        return;
    }
    rings_->setText(pith->inside && pith->missing_rings == 0 ? none_in_words(*pith) : rings_in_words(*pith));
    distance_->setText(tr("%1, %2").arg(distance_in_words(*pith), name_of(pith->source)));
    const auto year = pith_year(core->reading, core->series);
    year_->setText(year ? in_words(*year) : tr("not known"));
    QStringList lines;
    for (const OtherPith& other : pith->others) {
        lines << tr("%1: %2").arg(in_window_language(other.method), in_words(other));
    }
    others_->setText(lines.join('\n'));
}

} // namespace pithward::bench
