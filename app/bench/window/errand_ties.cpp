#include "app/bench/panels/message_bar.h"
#include "app/bench/window/main_window.h"
#include "app/project/core_details.h"
#include "app/project/errand.h"
#include "app/project/missing_list.h"
#include "app/project/new_project_dialog.h"
#include "app/project/report_dialog.h"

#include <QFileDialog>
#include <QLabel>
#include <algorithm>

// What the window lets the program's own commands do: a new project, measuring all of its cores, its report.

namespace pithward::bench {

void MainWindow::bind_errands() {
    using enum ActionId;
    actions_.on(NewProject, [this] { ask_for_new_project(); });
    actions_.on(MeasureAll, [this] { measure_all(); });
    actions_.on(WriteReport, [this] { ask_for_report(); });
    actions_.on(WritePackage, [this] { ask_for_package(); });
    connect(&errand_, &Errand::told, messages_, &MessageBar::tell);
    connect(&errand_, &Errand::started, this, [this] {
        missing_.clear();
        refresh();
    });
    connect(&errand_, &Errand::lacks, this, [this](const QString& what) { missing_ << what; });
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
                            {"create", project, "--sheet", sheet, "--scans", scans, "--by", who}, 0, [this, project] {
                                settle_when_opened_ = true;
                                desk_.open(project);
                            });
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

void MainWindow::ask_where(const OutputErrand& errand) {
    auto* dialog = new QFileDialog(this, errand.title);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setNameFilters(errand.filters);
    dialog->setDefaultSuffix(errand.ending);
    const QFileInfo project(project_file());
    dialog->setDirectory(project.absolutePath());
    dialog->selectFile(project.completeBaseName() + "." + errand.ending);
    connect(dialog, &QFileDialog::fileSelected, this, [this, errand](const QString& file) {
        // That a file may be written over, the dialog has asked.
        errand_.run(errand.doing, {errand.verb, project_file(), "--out", file, "--force"},
                    static_cast<int>(desk_.overview().cores.size()), [this, file, done = errand.done] {
                        hint_->setText(done.arg(file));
                        show_missing();
                    });
    });
    dialog->open();
}

void MainWindow::ask_for_report() {
    auto* dialog = new ReportDialog(project_file(), this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &ReportDialog::said, this, [this](const QString& file, const QStringList& more) {
        // That a file will be written over, the dialog has told.
        errand_.run(tr("Writing the report"), QStringList{"report", project_file(), "--out", file, "--force"} + more,
                    static_cast<int>(desk_.overview().cores.size()),
                    [this, file] { hint_->setText(tr("The report is in %1").arg(file)); });
    });
    dialog->open();
}

void MainWindow::show_missing() {
    if (missing_.isEmpty()) {
        return;
    }
    auto* list = new MissingList(missing_, this); // beside the window, so that one can be filled in after the other
    list->setAttribute(Qt::WA_DeleteOnClose);
    connect(list, &MissingList::wanted, this, &MainWindow::fill_in);
    list->show();
}

void MainWindow::fill_in(const QString& core, const QString& column) {
    const auto& cores = desk_.overview().cores;
    const auto named = std::ranges::find_if(cores, [&](const record::CoreEntry& one) {
        return core == QString::fromStdString(one.core.id) ||
               core == QString::fromStdString(one.site.id + "_" + one.core.id);
    });
    show_front(Front::Bench);
    if (named != cores.end()) {
        desk_.open_core(named->id);
    }
    if (!column.isEmpty()) {
        details_wanted_ = true;
        show_project();
        details_->take_focus(column.toStdString());
        activateWindow();
    }
}

void MainWindow::ask_for_package() {
    ask_where({.verb = "package",
               .title = tr("Write the archive package"),
               .filters = {tr("Archive package (*.zip)")},
               .ending = "zip",
               .doing = tr("Writing the archive package"),
               .done = tr("The archive package is in %1")});
}

} // namespace pithward::bench
