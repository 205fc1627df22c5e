#include "app/bench/panels/join_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>

namespace pithward::bench {

namespace {

constexpr int unknown_rings = -1;
constexpr int most_rings_between = 999;

} // namespace

JoinDialog::JoinDialog(const BenchModel& model, const QString& boundary, QWidget* parent)
    : QDialog(parent)
    , where_(new QComboBox)
    , how_(new QComboBox)
    , rings_(new QSpinBox)
    , meaning_(new QLabel) {
    setWindowTitle(tr("Go on on another scan"));
    for (const BenchScan& scan : model.scans()) {
        for (int i = 0; scan.id != model.present().scan && i < static_cast<int>(scan.cores.size()); ++i) {
            const picture::MeasuredCore& core = scan.cores[static_cast<std::size_t>(i)];
            if (!model.taken_in(core.reading)) {
                where_->addItem(tr("%1, core %2: %n rings", nullptr, static_cast<int>(core.series.rings.size()))
                                    .arg(QString::fromStdString(scan.opened->name()))
                                    .arg(i + 1),
                                QPoint(scan.id, i));
            }
        }
    }
    if (!boundary.isEmpty()) {
        how_->addItem(tr("Both show the boundary in hand, of %1").arg(boundary), static_cast<int>(How::AtBoundary));
    }
    how_->addItem(tr("At a crack, no wood lost"), static_cast<int>(How::AtCrack));
    how_->addItem(tr("Wood is lost between them"), static_cast<int>(How::OverLostWood));
    rings_->setRange(unknown_rings, most_rings_between);
    rings_->setSpecialValueText(tr("not known"));
    rings_->setValue(unknown_rings);
    meaning_->setWordWrap(true);
    meaning_->setMinimumHeight(3 * meaning_->fontMetrics().lineSpacing());
    meaning_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto* form = new QFormLayout(this);
    form->addRow(tr("&Next part"), where_);
    form->addRow(tr("&How they meet"), how_);
    form->addRow(tr("&Whole rings gone"), rings_);
    form->addRow(meaning_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    ok_ = buttons->button(QDialogButtonBox::Ok);
    form->addRow(buttons);
    connect(where_, &QComboBox::currentIndexChanged, this, &JoinDialog::follow);
    connect(how_, &QComboBox::currentIndexChanged, this, &JoinDialog::follow);
    connect(rings_, &QSpinBox::valueChanged, this, &JoinDialog::follow);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(buttons, &QDialogButtonBox::accepted, this, [this] {
        accept();
        const QPoint place = where_->currentData().toPoint();
        const bool known = how() == How::OverLostWood && rings_->value() != unknown_rings;
        emit chosen({place.x(), place.y()}, how(), known ? std::optional(rings_->value()) : std::nullopt);
    });
    setMinimumWidth(460);
    follow();
}

JoinDialog::How JoinDialog::how() const {
    return static_cast<How>(how_->currentData().toInt());
}

void JoinDialog::follow() {
    const bool somewhere = where_->count() > 0;
    ok_->setEnabled(somewhere);
    how_->setEnabled(somewhere);
    rings_->setEnabled(somewhere && how() == How::OverLostWood);
    if (!somewhere) {
        meaning_->setText(tr("No other scan with a core is on the bench. Open the scan on which this core goes on."));
    } else if (how() == How::AtBoundary) {
        meaning_->setText(tr("The other scan is shown next: click the same boundary there. What lies outside it there, "
                             "and inside it here, is left out; no ring is lost or gained."));
    } else if (how() == How::AtCrack) {
        meaning_->setText(tr("The end of the path here meets the start of the path there. A ring that goes over the "
                             "crack is measured in both parts."));
    } else if (rings_->value() == unknown_rings) {
        meaning_->setText(tr("The series ends here, and the rings there have no years, until the number is known."));
    } else {
        meaning_->setText(tr("The rings that the gap touches get no width; years go on beyond it."));
    }
}

} // namespace pithward::bench
