#include "app/project/report_dialog.h"

#include <QDialogButtonBox>
#include <QDir>
#include <QDoubleValidator>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace pithward::bench {

namespace {

constexpr double most_years = 500.0; // as the command takes

QWidget* side_by_side(std::initializer_list<QWidget*> parts) {
    auto* row = new QWidget;
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    for (QWidget* part : parts) {
        layout->addWidget(part);
    }
    return row;
}

QLineEdit* number_line(const QString& what, QWidget* parent) {
    auto* line = new QLineEdit;
    auto* range = new QDoubleValidator(0.0, most_years, 1, parent);
    range->setNotation(QDoubleValidator::StandardNotation);
    range->setLocale(QLocale::c()); // as the command reads it
    line->setValidator(range);
    line->setAccessibleName(what);
    line->setPlaceholderText(what);
    return line;
}

} // namespace

ReportDialog::ReportDialog(const QString& project, QWidget* parent)
    : QDialog(parent)
    , file_(new QLineEdit)
    , climate_(new QLineEdit)
    , years_(number_line(tr("years"), this))
    , years_sd_(number_line(tr("standard deviation"), this))
    , remark_(new QLabel) {
    setWindowTitle(tr("Write the report"));
    const QFileInfo info(project);
    file_->setText(info.dir().filePath(info.completeBaseName() + ".pdf"));
    climate_->setPlaceholderText(tr("none"));
    remark_->setWordWrap(true);
    auto* choose_file = new QPushButton(tr("Choose…"));
    auto* choose_climate = new QPushButton(tr("Choose…"));
    auto* meaning = new QLabel(tr("A name that ends in .pdf or .html. With monthly climate values, a row a year or a "
                                  "row a month, each chronology is held against months and seasons; with the years to "
                                  "the height of coring, ages are told for the whole tree."));
    meaning->setWordWrap(true);
    auto* form = new QFormLayout(this);
    form->addRow(meaning);
    form->addRow(tr("&Report"), side_by_side({file_, choose_file}));
    form->addRow(tr("&Climate series (CSV)"), side_by_side({climate_, choose_climate}));
    form->addRow(tr("&Growing up to the cores"), side_by_side({years_, years_sd_}));
    form->addRow(remark_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    write_ = buttons->addButton(tr("&Write the report"), QDialogButtonBox::AcceptRole);
    form->addRow(buttons);
    setMinimumWidth(600);
    connect(choose_file, &QPushButton::clicked, this, [this] {
        const QString chosen = QFileDialog::getSaveFileName(
            this, tr("Name the report"), file_->text(), tr("PDF (*.pdf)") + ";;" + tr("Web page (*.html)"), nullptr,
            QFileDialog::DontConfirmOverwrite); // the line below tells it
        if (!chosen.isEmpty()) {
            file_->setText(chosen);
        }
    });
    connect(choose_climate, &QPushButton::clicked, this, [this] {
        const QString chosen =
            QFileDialog::getOpenFileName(this, tr("Choose the climate series"), QFileInfo(file_->text()).absolutePath(),
                                         tr("Tables (*.csv);;All files (*)"));
        if (!chosen.isEmpty()) {
            climate_->setText(chosen);
        }
    });
    for (const QLineEdit* line : {file_, climate_, years_, years_sd_}) {
        connect(line, &QLineEdit::textChanged, this, &ReportDialog::check);
    }
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(buttons, &QDialogButtonBox::accepted, this, [this] {
        accept();
        emit said(file_->text(), more());
    });
    write_->setFocus();
    check();
}

void ReportDialog::check() {
    const QFileInfo file(file_->text());
    const bool named =
        file_->text().endsWith(".pdf", Qt::CaseInsensitive) || file_->text().endsWith(".html", Qt::CaseInsensitive);
    const bool place = named && file.absoluteDir().exists() && !file.isDir();
    const bool climate = climate_->text().isEmpty() || QFileInfo(climate_->text()).isFile();
    const bool numbers = years_->text().isEmpty() ? years_sd_->text().isEmpty()
                                                  : years_->hasAcceptableInput() && (years_sd_->text().isEmpty() ||
                                                                                     years_sd_->hasAcceptableInput());
    write_->setEnabled(place && climate && numbers);
    if (!named) {
        remark_->setText(tr("The report's name has to end in .pdf or .html."));
    } else if (!place) {
        remark_->setText(tr("There is no such folder."));
    } else if (!climate) {
        remark_->setText(tr("There is no such climate file."));
    } else if (!numbers) {
        remark_->setText(tr("Give the years as numbers of 0 to 500."));
    } else {
        remark_->setText(file.exists() ? tr("This file is there already and will be replaced.") : QString());
    }
}

QStringList ReportDialog::more() const {
    QStringList options;
    if (!climate_->text().isEmpty()) {
        options << "--climate" << climate_->text();
    }
    if (!years_->text().isEmpty()) {
        options << "--to-height"
                << (years_sd_->text().isEmpty() ? years_->text() : years_->text() + "," + years_sd_->text());
    }
    return options;
}

} // namespace pithward::bench
