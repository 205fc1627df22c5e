#include "app/project/person_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <utility>

namespace pithward::bench {

namespace {

constexpr int longest_entry = 200;

QComboBox* entry_with_choices(const QStringList& choices) {
    auto* box = new QComboBox;
    box->setEditable(true);
    box->setInsertPolicy(QComboBox::NoInsert);
    box->addItems(choices);
    box->lineEdit()->setMaxLength(longest_entry);
    return box;
}

} // namespace

PersonDialog::PersonDialog(QMap<QString, QString> roles, const QString& now, QWidget* parent)
    : QDialog(parent)
    , roles_(std::move(roles)) {
    QStringList names = roles_.keys();
    if (!names.contains(now)) {
        names.prepend(now);
    }
    QStringList choices{QString(), tr("technician"), tr("supervisor")};
    choices << roles_.values();
    choices.removeDuplicates();
    name_ = entry_with_choices(names);
    role_ = entry_with_choices(choices);
    setWindowTitle(tr("Who works here"));
    auto* meaning =
        new QLabel(tr("As the history shall tell it. These are entries, no locks: who can write to the file can "
                      "write under any name."));
    meaning->setWordWrap(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    auto* form = new QFormLayout(this);
    form->addRow(tr("&Name"), name_);
    form->addRow(tr("&Role"), role_);
    form->addRow(meaning);
    form->addRow(buttons);
    setMinimumWidth(420);
    const auto follow = [this, ok = buttons->button(QDialogButtonBox::Ok)] {
        ok->setEnabled(!name_->currentText().trimmed().isEmpty());
        follow_name();
    };
    connect(name_, &QComboBox::currentTextChanged, this, follow);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(buttons, &QDialogButtonBox::accepted, this, [this] {
        accept();
        emit said(name_->currentText().trimmed(), role_->currentText().trimmed());
    });
    name_->setCurrentText(now);
    follow();
}

void PersonDialog::follow_name() {
    const auto role = roles_.constFind(name_->currentText().trimmed());
    if (role != roles_.constEnd()) {
        role_->setCurrentText(*role);
    }
}

} // namespace pithward::bench
