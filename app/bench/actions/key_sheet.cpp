#include "app/bench/actions/key_sheet.h"

#include "app/bench/actions/action_table.h"
#include "app/bench/actions/gestures.h"

#include <QCoreApplication>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QKeySequence>
#include <QTableWidget>
#include <QVBoxLayout>
#include <optional>

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

void add_heading(QTableWidget* table, const QString& title) {
    add(table, title, {});
    QTableWidgetItem* item = table->item(table->rowCount() - 1, 0);
    QFont font = table->font();
    font.setBold(true);
    item->setFont(font);
    table->setSpan(item->row(), 0, 1, 2);
}

QTableWidget* sheet() {
    auto* table = new QTableWidget(0, 2);
    table->verticalHeader()->hide();
    table->horizontalHeader()->hide();
    table->setShowGrid(false);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    return table;
}

} // namespace

KeySheet::KeySheet(QWidget* parent)
    : QDialog(parent) {
    setWindowTitle(tr("Keys and mouse"));
    QTableWidget* table = sheet();
    table->setAccessibleName(tr("Keys and what the mouse does"));
    add_heading(table, tr("On the scan"));
    for (const Gesture& gesture : gestures()) {
        add(table, QCoreApplication::translate("Gestures", gesture.how),
            QCoreApplication::translate("Gestures", gesture.help));
    }
    std::optional<Menu> menu;
    for (const ActionSpec& spec : action_table()) {
        if (*spec.keys == '\0') {
            continue;
        }
        if (menu != spec.menu) {
            menu = spec.menu;
            add_heading(table, title_of(spec.menu).remove('&'));
        }
        add(table, native(spec.keys), help_of(spec));
    }
    table->resizeColumnToContents(0);
    table->horizontalHeader()->setStretchLastSection(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(table);
    layout->addWidget(buttons);
    resize(760, 640);
}

} // namespace pithward::bench
