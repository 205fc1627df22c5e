#include "app/bench/model/hand_work.h"
#include "app/bench/panels/message_bar.h"
#include "app/bench/window/main_window.h"

#include <QCloseEvent>
#include <QMessageBox>
#include <QPushButton>
#include <algorithm>

// What is seen to before the window closes, so that nothing is lost.

namespace pithward::bench {

void MainWindow::closeEvent(QCloseEvent* event) {
    if (QWidget* field = focusWidget()) {
        field->clearFocus(); // what was typed and not ended with Return counts too
    }
    closing_ = desk_.waiting() > 0;
    if (closing_) {
        messages_->tell(tr("The window closes when the last edits are written."));
        event->ignore();
        return;
    }
    if (const QStringList scans = not_kept(); !scans.isEmpty() && !leaving_) {
        event->ignore();
        ask_before_closing(scans);
        return;
    }
    QMainWindow::closeEvent(event);
}

QStringList MainWindow::not_kept() const {
    QStringList names;
    for (const BenchScan& scan : control_.model().scans()) {
        const auto known = exported_.find(scan.id);
        const bool kept = known != exported_.end() && known->second == hand_edits(scan);
        if (!scan.recorded && !kept && std::ranges::any_of(scan.documents, touched_by_hand)) {
            names << QString::fromStdString(scan.opened->name());
        }
    }
    return names;
}

void MainWindow::ask_before_closing(const QStringList& scans) {
    constexpr qsizetype most = 5;
    auto* dialog = new QMessageBox(this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setIcon(QMessageBox::Warning);
    dialog->setTextFormat(Qt::PlainText);
    dialog->setWindowTitle(tr("Close without exporting?"));
    const QString named =
        QStringList(scans.mid(0, most)).join(", ") + (scans.size() > most ? QString(", …") : QString());
    dialog->setText(tr("What you changed here is in no file yet: %1").arg(named));
    dialog->setInformativeText(tr("Closing loses it. Export first (Ctrl+J writes everything that was read), or make a "
                                  "project, which keeps every edit."));
    QPushButton* stay = dialog->addButton(tr("&Stay"), QMessageBox::RejectRole);
    dialog->addButton(tr("&Close and lose it"), QMessageBox::DestructiveRole);
    dialog->setDefaultButton(stay);
    dialog->setEscapeButton(stay);
    connect(dialog, &QMessageBox::buttonClicked, this, [this, stay](const QAbstractButton* button) {
        if (button != stay) {
            leaving_ = true;
            QMetaObject::invokeMethod(this, &QWidget::close, Qt::QueuedConnection); // when the question is gone
        }
    });
    dialog->open();
}

} // namespace pithward::bench
