#include "app/bench/exporting/export_dialog.h"

#include "app/bench/look/sentences.h"
#include "app/bench/model/beside_window.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QFontDatabase>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QStackedWidget>

namespace pithward::bench {

namespace {

constexpr qsizetype most_shown = 60'000; ///< Characters of a file that are shown.

QString name_of(const ExportFormat& format) {
    return QCoreApplication::translate("Exports", format.name);
}

} // namespace

ExportDialog::ExportDialog(ExportInput input, const ExportFormat& first, QWidget* parent)
    : QDialog(parent)
    , input_(std::move(input))
    , form_(new QComboBox)
    , path_(new QLineEdit)
    , text_(new QPlainTextEdit)
    , picture_(new QLabel)
    , preview_(new QStackedWidget)
    , said_(new QLabel) {
    pool_.setMaxThreadCount(1);
    for (const ExportFormat& known : export_formats()) {
        form_->addItem(name_of(known));
    }
    form_->setCurrentIndex(static_cast<int>(&first - export_formats().data()));
    build();
    connect(form_, &QComboBox::currentIndexChanged, this, &ExportDialog::prepare);
    connect(path_, &QLineEdit::textChanged, this, &ExportDialog::follow_path);
    prepare();
    save_->setFocus();
}

ExportDialog::~ExportDialog() {
    stop_.request_stop();
    pool_.waitForDone();
}

void ExportDialog::build() {
    setWindowTitle(tr("Export"));
    text_->setReadOnly(true);
    text_->setLineWrapMode(QPlainTextEdit::NoWrap);
    text_->setFont(QFontDatabase::systemFont(QFontDatabase::FixedFont));
    text_->setAccessibleName(tr("What will be written"));
    picture_->setAlignment(Qt::AlignCenter);
    picture_->setAccessibleName(tr("The picture that will be written"));
    preview_->addWidget(text_);
    preview_->addWidget(picture_);
    said_->setWordWrap(true);
    path_->setAccessibleName(tr("File to write"));
    auto* choose = new QPushButton(tr("Choose…"));
    choose->setAutoDefault(false);
    connect(choose, &QPushButton::clicked, this, &ExportDialog::ask_for_path);
    auto* place = new QHBoxLayout;
    place->addWidget(path_, 1);
    place->addWidget(choose);
    auto* form = new QFormLayout;
    form->addRow(tr("&Form"), form_);
    auto* to = new QLabel(tr("&To"));
    to->setBuddy(path_);
    form->addRow(to, place);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Save | QDialogButtonBox::Cancel);
    save_ = buttons->button(QDialogButtonBox::Save);
    save_->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &ExportDialog::save);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(form);
    layout->addWidget(preview_, 1);
    layout->addWidget(said_);
    layout->addWidget(buttons);
    resize(820, 620);
}

const ExportFormat& ExportDialog::format() const {
    return export_formats()[static_cast<std::size_t>(form_->currentIndex())];
}

QString ExportDialog::preview_text() const {
    return text_->toPlainText();
}

QString ExportDialog::said() const {
    return said_->text();
}

void ExportDialog::set_path(const QString& path) {
    path_->setText(path);
}

void ExportDialog::prepare() {
    stop_.request_stop();
    stop_ = {};
    made_.reset();
    save_->setEnabled(false);
    path_->setText(QString::fromStdString(proposed_name(*input_.scan, format())));
    said_->setText(tr("Preparing…"));
    const std::stop_token stop = stop_.get_token();
    const auto make = [bytes = format().bytes, input = input_, stop] { return bytes(input, Work{stop, {}}); };
    beside_window(pool_, this, make, [this, stop](const Outcome<ExportBytes>& made) {
        if (!stop.stop_requested()) {
            show_made(made);
        }
    });
}

void ExportDialog::show_made(const Outcome<ExportBytes>& made) {
    if (!made) {
        text_->clear();
        preview_->setCurrentWidget(text_);
        said_->setText(in_window_language(made.error().line()));
        return;
    }
    made_ = *made;
    const QByteArray bytes = QByteArray::fromRawData(made_->bytes.data(), static_cast<qsizetype>(made_->bytes.size()));
    QPixmap picture;
    if (picture.loadFromData(bytes)) {
        picture_->setPixmap(picture.scaled(preview_->size(), Qt::KeepAspectRatio, Qt::SmoothTransformation));
        preview_->setCurrentWidget(picture_);
    } else {
        text_->setPlainText(QString::fromUtf8(bytes.left(most_shown)) +
                            (bytes.size() > most_shown ? tr("\n… and so on") : QString()));
        preview_->setCurrentWidget(text_);
    }
    save_->setEnabled(true);
    follow_path();
}

void ExportDialog::follow_path() {
    if (!made_) {
        return;
    }
    QStringList said;
    for (const std::string& remark : made_->remarks) {
        said << in_window_language(remark);
    }
    if (const auto spared = spare_scans(path_->text().toStdString(), input_); !spared) {
        said << in_window_language(spared.error().line());
    } else if (QFileInfo::exists(path_->text())) {
        said << tr("There is a file of this name. Saving writes over it.");
    }
    said_->setText(said.join('\n'));
}

void ExportDialog::ask_for_path() {
    auto* dialog = new QFileDialog(this, tr("Export to"), path_->text());
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setOption(QFileDialog::DontConfirmOverwrite); // said below the preview
    dialog->setDefaultSuffix(format().suffix);
    dialog->setNameFilter(QString("%1 (*.%2)").arg(name_of(format()), format().suffix));
    dialog->selectFile(path_->text());
    connect(dialog, &QFileDialog::fileSelected, path_, &QLineEdit::setText);
    dialog->open();
}

void ExportDialog::save() {
    if (!made_) {
        return;
    }
    const std::string path = path_->text().toStdString();
    const auto done = spare_scans(path, input_).and_then([&] { return write_export(path, *made_); });
    if (!done) {
        said_->setText(in_window_language(done.error().line()));
        return;
    }
    accept();
    emit written(path_->text());
}

} // namespace pithward::bench
