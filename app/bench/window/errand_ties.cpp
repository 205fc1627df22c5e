#include "app/bench/panels/message_bar.h"
#include "app/bench/window/main_window.h"
#include "app/project/errand.h"
#include "app/project/new_project_dialog.h"

#include <QFileDialog>
#include <QLabel>

// What the window lets the program's own commands do: a new project, measuring all of its cores, its report.

namespace pithward::bench {

void MainWindow::bind_errands() {
    using enum ActionId;
    actions_.on(NewProject, [this] { ask_for_new_project(); });
    actions_.on(MeasureAll, [this] { measure_all(); });
    actions_.on(WriteReport, [this] { ask_for_report(); });
    connect(&errand_, &Errand::told, messages_, &MessageBar::tell);
    connect(&errand_, &Errand::started, this, &MainWindow::refresh);
    connect(&errand_, &Errand::finished, this, &MainWindow::refresh);
}

QString MainWindow::project_file() const {
    return QString::fromStdString(desk_.overview().file.string());
}

void MainWindow::ask_for_new_project() {
    auto* dialog = new NewProjectDialog(this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &NewProjectDialog::said, this,
            [this](const QString& sheet, const QString& scans, const QString& project) {
                const QString who = QString::fromStdString(control_.model().stamp().who);
                errand_.run(tr("Making the project"),
                            {"create", project, "--sheet", sheet, "--scans", scans, "--by", who}, 0,
                            [this, project] { desk_.open(project); });
            });
    dialog->open();
}

void MainWindow::measure_all() {
    const auto& cores = desk_.overview().cores;
    const QString who = QString::fromStdString(control_.model().stamp().who);
    errand_.run(tr("Measuring every core that has no reading"), {"measure", project_file(), "--by", who},
                static_cast<int>(cores.size()),
                [this] { hint_->setText(tr("Every core that could be was measured")); });
}

void MainWindow::ask_for_report() {
    auto* dialog = new QFileDialog(this, tr("Write the report"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setNameFilters({tr("PDF (*.pdf)"), tr("Web page (*.html)")});
    dialog->setDefaultSuffix("pdf");
    const QFileInfo project(project_file());
    dialog->setDirectory(project.absolutePath());
    dialog->selectFile(project.completeBaseName() + ".pdf");
    connect(dialog, &QFileDialog::fileSelected, this, [this](const QString& file) {
        // That a file may be written over, the dialog has asked.
        errand_.run(tr("Writing the report"), {"report", project_file(), "--out", file, "--force"},
                    static_cast<int>(desk_.overview().cores.size()),
                    [this, file] { hint_->setText(tr("The report is in %1").arg(file)); });
    });
    dialog->open();
}

} // namespace pithward::bench
