#include "app/bench/panels/break_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>

namespace pithward::bench {

namespace {

constexpr int not_known = -1;
constexpr int most_rings_lost = 999;

} // namespace

BreakDialog::BreakDialog(const Break& stretch, QWidget* parent)
    : QDialog(parent)
    , before_(stretch)
    , kind_(new QComboBox)
    , rings_(new QSpinBox)
    , meaning_(new QLabel)
    , note_(new QLineEdit(QString::fromStdString(stretch.note))) {
    setWindowTitle(tr("Break"));
    kind_->addItem(tr("Crack"), static_cast<int>(Break::Kind::Crack));
    kind_->addItem(tr("Lost wood"), static_cast<int>(Break::Kind::LostWood));
    kind_->setCurrentIndex(kind_->findData(static_cast<int>(stretch.kind)));
    rings_->setRange(not_known, most_rings_lost);
    rings_->setSpecialValueText(tr("not known"));
    rings_->setValue(stretch.rings_lost.value_or(not_known));
    meaning_->setWordWrap(true);
    auto* form = new QFormLayout(this);
    form->addRow(tr("&Kind"), kind_);
    form->addRow(tr("&Whole rings gone"), rings_);
    form->addRow(meaning_);
    form->addRow(tr("&Note"), note_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    auto* remove = buttons->addButton(tr("Remove this break"), QDialogButtonBox::DestructiveRole);
    form->addRow(buttons);
    connect(kind_, &QComboBox::currentIndexChanged, this, &BreakDialog::follow_kind);
    connect(rings_, &QSpinBox::valueChanged, this, &BreakDialog::follow_kind);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(buttons, &QDialogButtonBox::accepted, this, [this] {
        accept();
        emit changed(as_said());
    });
    connect(remove, &QPushButton::clicked, this, [this] {
        accept();
        emit removed(before_.id);
    });
    setMinimumWidth(420);
    follow_kind();
}

void BreakDialog::follow_kind() {
    const Break said = as_said();
    const bool lost = said.kind == Break::Kind::LostWood;
    rings_->setEnabled(lost);
    if (!lost) {
        meaning_->setText(tr("No wood is lost: its breadth is taken off the ring that it crosses."));
    } else if (said.rings_lost) {
        meaning_->setText(tr("The rings that it touches get no width; years go on beyond it."));
    } else {
        meaning_->setText(
            tr("The series ends here, and the rings beyond it have no years, until the number is known."));
    }
}

Break BreakDialog::as_said() const {
    Break said = before_;
    said.kind = static_cast<Break::Kind>(kind_->currentData().toInt());
    said.rings_lost = 0;
    if (said.kind == Break::Kind::LostWood) {
        said.rings_lost = rings_->value() == not_known ? std::nullopt : std::optional(rings_->value());
    }
    said.note = note_->text().toStdString();
    return said;
}

} // namespace pithward::bench
