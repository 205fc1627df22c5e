#include "app/bench/actions/key_sheet.h"

#include "app/bench/actions/action_table.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QKeySequence>
#include <QTableWidget>
#include <QVBoxLayout>

namespace pithward::bench {

namespace {

QString native(const QString& keys) {
    QStringList names;
    for (const QString& key : keys.split(' ', Qt::SkipEmptyParts)) {
        names << QKeySequence(key, QKeySequence::PortableText).toString(QKeySequence::NativeText);
    }
    return names.join(", ");
}

void add(QTableWidget* table, const QString& keys, const QString& help) {
    const int row = table->rowCount();
    table->insertRow(row);
    table->setItem(row, 0, new QTableWidgetItem(keys));
    table->setItem(row, 1, new QTableWidgetItem(help));
}

} // namespace

KeySheet::KeySheet(QWidget* parent)
    : QDialog(parent) {
    setWindowTitle(tr("Keys"));
    auto* table = new QTableWidget(0, 2);
    table->setAccessibleName(tr("Keys"));
    table->setHorizontalHeaderLabels({tr("Key"), tr("What it does")});
    table->verticalHeader()->hide();
    table->setShowGrid(false);
    table->setAlternatingRowColors(true);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    add(table, tr("H, held"), tr("Hide every mark while it is held."));
    add(table, tr("Wheel"), tr("Zoom at the cursor; with Shift move along."));
    add(table, tr("Drag, arrows"), tr("Move the scan; arrows with Shift in large steps."));
    for (const ActionSpec& spec : action_table()) {
        if (*spec.keys != '\0') {
            add(table, native(spec.keys), help_of(spec));
        }
    }
    add(table, tr("Enter"), tr("While a path is drawn: measure it."));
    add(table, tr("Backspace"), tr("While a path is drawn: take the last point back."));
    add(table, tr("Escape"), tr("While a path is drawn: give it up."));
    table->resizeColumnToContents(0);
    table->horizontalHeader()->setStretchLastSection(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(table);
    layout->addWidget(buttons);
    resize(560, 560);
}

} // namespace pithward::bench
