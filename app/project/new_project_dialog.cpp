#include "app/project/new_project_dialog.h"

#include <QDialogButtonBox>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <functional>

namespace pithward::bench {

namespace {

/// A line for a path, with a button that looks for it.
QWidget* with_button(QLineEdit* line, const std::function<QString()>& look) {
    auto* row = new QWidget;
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    auto* button = new QPushButton(NewProjectDialog::tr("Choose…"));
    layout->addWidget(line);
    layout->addWidget(button);
    QObject::connect(button, &QPushButton::clicked, line, [line, look] {
        if (const QString chosen = look(); !chosen.isEmpty()) {
            line->setText(chosen);
        }
    });
    return row;
}

} // namespace

NewProjectDialog::NewProjectDialog(QWidget* parent)
    : QDialog(parent)
    , sheet_(new QLineEdit)
    , scans_(new QLineEdit)
    , project_(new QLineEdit) {
    setWindowTitle(tr("New project"));
    auto* meaning =
        new QLabel(tr("A project keeps the field sheet's cores, their readings and who did what, in one file beside "
                      "the scans. Scans are found by the column “scan” of the sheet, or by the name of the core."));
    meaning->setWordWrap(true);
    auto* form = new QFormLayout(this);
    form->addRow(meaning);
    form->addRow(tr("&Field sheet (CSV)"), with_button(sheet_, [this] {
                     return QFileDialog::getOpenFileName(this, tr("Choose the field sheet"), sheet_->text(),
                                                         tr("Tables (*.csv);;All files (*)"));
                 }));
    form->addRow(tr("Folder of the &scans"), with_button(scans_, [this] {
                     return QFileDialog::getExistingDirectory(this, tr("Choose the folder of the scans"),
                                                              scans_->text());
                 }));
    form->addRow(tr("&Project"), with_button(project_, [this] {
                     return QFileDialog::getSaveFileName(this, tr("Name the project"), project_->text(),
                                                         tr("Projects (*.pithward)"));
                 }));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    make_ = buttons->addButton(tr("&Make the project"), QDialogButtonBox::AcceptRole);
    form->addRow(buttons);
    setMinimumWidth(560);
    connect(sheet_, &QLineEdit::textChanged, this, &NewProjectDialog::follow_sheet);
    for (const QLineEdit* line : {sheet_, scans_, project_}) {
        connect(line, &QLineEdit::textChanged, this, &NewProjectDialog::check);
    }
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(buttons, &QDialogButtonBox::accepted, this, [this] {
        accept();
        emit said(sheet_->text(), scans_->text(), project_->text());
    });
    check();
}

void NewProjectDialog::follow_sheet() {
    const QFileInfo sheet(sheet_->text());
    if (!sheet.isFile()) {
        return;
    }
    scans_->setText(sheet.absolutePath());
    project_->setText(sheet.absoluteDir().filePath(sheet.absoluteDir().dirName() + ".pithward"));
}

void NewProjectDialog::check() {
    make_->setEnabled(QFileInfo(sheet_->text()).isFile() && QFileInfo(scans_->text()).isDir() &&
                      project_->text().endsWith(".pithward") && !QFileInfo::exists(project_->text()));
}

} // namespace pithward::bench
