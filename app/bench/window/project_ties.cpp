#include "app/bench/panels/core_list.h"
#include "app/bench/panels/message_bar.h"
#include "app/bench/scan_view/scan_view.h"
#include "app/bench/window/main_window.h"
#include "app/project/core_details.h"
#include "app/project/person_dialog.h"
#include "app/project/project_list.h"
#include "libcore/review/verdicts.h"

#include <QFileDialog>
#include <QLabel>
#include <QMessageBox>

// How a project is tied to the window: its list of cores, what is written and what not yet, who works here.

namespace pithward::bench {

void MainWindow::bind_project() {
    using enum ActionId;
    actions_.on(OpenProject, [this] { ask_for_project(); });
    actions_.on(SayWho, [this] { ask_who(); });
    actions_.on(MarkDone, [this] { say_done(); });
    actions_.on(AcceptReading, [this] { accept_reading(); });
    actions_.on(NextToDo, [this] { go_to_next_to_do(); });
    actions_.on(ShowDetails, [this] { show_details(); });
    const auto step = [this](int by) {
        const BenchScan* scan = control_.model().scan();
        if (scan != nullptr && scan->recorded) {
            desk_.step_core(by);
        } else {
            control_.step_scan(by);
        }
    };
    actions_.on(NextScan, [step] { step(1); });
    actions_.on(PreviousScan, [step] { step(-1); });
}

void MainWindow::tie_project() {
    connect(&desk_, &ProjectDesk::told, messages_, &MessageBar::tell);
    connect(&desk_, &ProjectDesk::refused, this, [this] { closing_ = false; });
    connect(&desk_, &ProjectDesk::waiting_changed, this, &MainWindow::show_saved);
    connect(&desk_, &ProjectDesk::overview_changed, this, &MainWindow::refresh);
    connect(&desk_, &ProjectDesk::leads_outside, this, &MainWindow::ask_about_outside);
    connect(&desk_, &ProjectDesk::opened, this, &MainWindow::go_to_next_to_do);
    connect(&desk_, &ProjectDesk::opened, this, &MainWindow::note_opened);
    connect(details_, &CoreDetails::told, messages_, &MessageBar::tell);
    connect(project_list_, &ProjectList::core_chosen, &desk_, &ProjectDesk::open_core);
    connect(&control_.model(), &BenchModel::changed, project_list_, &ProjectList::show_present);
    connect(&control_.model(), &BenchModel::changed, this, [this] { show_saved(desk_.waiting()); });
}

QString MainWindow::name_of_present() const {
    const Document* document = control_.model().document();
    const auto core = desk_.present();
    const record::CoreEntry* entry = core ? core_of(desk_.overview(), *core) : nullptr;
    if (entry == nullptr) {
        return {};
    }
    const std::string name =
        document != nullptr ? name_of_reading(desk_.overview(), document->reading().id) : entry->core.id;
    return QString::fromStdString(name.empty() ? entry->core.id : name);
}

void MainWindow::show_project() {
    const auto& scans = control_.model().scans();
    const bool others = std::ranges::any_of(scans, [](const BenchScan& scan) { return !scan.recorded; });
    project_part_->setVisible(desk_.is_open());
    details_part_->setVisible(details_wanted_);
    side_->setVisible(desk_.is_open() || (details_wanted_ && details_->has_details()));
    for (QWidget* part : {static_cast<QWidget*>(cores_), static_cast<QWidget*>(cores_heading_)}) {
        part->setVisible(!desk_.is_open() || others); // what is of the project stands in its own list
    }
    saved_->setVisible(desk_.is_open());
    if (desk_.is_open()) {
        const QString project = QString::fromStdString(desk_.overview().file.stem().string());
        const QString shown = name_of_present();
        if (front_ != Front::Bench) {
            const QString page = front_ == Front::Review ? tr("Review")
                                 : front_ == Front::Site ? tr("Site")
                                                         : tr("Progress");
            setWindowTitle(tr("%1, %2 – Pithward").arg(page, project));
            return;
        }
        setWindowTitle(shown.isEmpty() ? tr("%1 – Pithward").arg(project)
                                       : tr("%1, %2 – Pithward").arg(shown, project));
    }
}

void MainWindow::show_details() {
    const bool there = details_->isVisible() && details_->isAncestorOf(focusWidget());
    details_wanted_ = !there;
    show_project();
    if (there) {
        view_->setFocus();
    } else {
        details_->take_focus();
    }
}

void MainWindow::show_saved(int waiting) {
    if (!desk_.overview().can_change) {
        saved_->setText(tr("Only to be looked at"));
    } else {
        saved_->setText(waiting > 0 ? tr("Writing %n…", nullptr, waiting) : tr("All is written"));
    }
    if (closing_ && waiting == 0) {
        close();
    }
}

bool MainWindow::in_project() {
    const BenchScan* scan = control_.model().home();
    const bool recorded = scan != nullptr && scan->recorded;
    if (!recorded) {
        messages_->tell(tr("Readings are marked, accepted and passed in a project. Open one, or make one with "
                           "pithward create."));
    }
    return recorded;
}

void MainWindow::accept_reading() {
    if (in_project() && control_.model().document() != nullptr) {
        desk_.accept(control_.model().document()->reading().id);
    }
}

void MainWindow::say_done() {
    if (!in_project()) {
        return;
    }
    const auto done = control_.model().change([this](Document& document) {
        const EditStamp stamp = control_.model().stamp();
        return review::mark(document.reading(), stamp.who).and_then([&](const Edit& edit) {
            return document.make(edit, stamp);
        });
    });
    if (!done) {
        messages_->tell(QString::fromStdString(done.error().line()));
    } else if (*done) {
        hint_->setText(tr("Marked as done: it waits for a second person"));
    }
}

void MainWindow::go_to_next_to_do() {
    if (const auto core = project_list_->next_to_do()) {
        desk_.open_core(*core);
    } else if (control_.model().core() == nullptr && !desk_.overview().cores.empty()) {
        desk_.open_core(desk_.overview().cores.front().id);
    } else {
        hint_->setText(tr("No core waits for its analyst"));
    }
}

void MainWindow::ask_for_project() {
    auto* dialog = new QFileDialog(this, tr("Open a project"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setFileMode(QFileDialog::ExistingFile);
    dialog->setNameFilters({tr("Projects (*.pithward)"), tr("All files (*)")});
    connect(dialog, &QFileDialog::fileSelected, &desk_, &ProjectDesk::open);
    dialog->open();
}

void MainWindow::ask_about_outside(record::CoreId core, const PlaceOutside& outside) {
    const QString scan = QString::fromStdString(outside.scan);
    const QString place = QString::fromStdString(outside.place.string());
    auto* dialog = new QMessageBox(this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setIcon(QMessageBox::Warning);
    dialog->setTextFormat(Qt::PlainText); // a stranger wrote it
    dialog->setWindowTitle(tr("A scan outside of the project's folder"));
    dialog->setText(tr("The project names the scan %1, which is outside of its folder:\n\n%2").arg(scan, place));
    dialog->setInformativeText(tr("Read this file? Say yes only if you know it. The answer holds while this window is "
                                  "open."));
    dialog->setStandardButtons(QMessageBox::Yes | QMessageBox::No);
    dialog->setDefaultButton(QMessageBox::No);
    dialog->setEscapeButton(QMessageBox::No);
    connect(dialog, &QMessageBox::finished, this, [this, core, place, real = outside.place](int answer) {
        if (answer == QMessageBox::Yes) {
            desk_.allow(real);
            desk_.open_core(core);
        } else {
            messages_->tell(tr("The scan at %1 was not read.").arg(place));
        }
    });
    dialog->open();
}

void MainWindow::ask_who() {
    QMap<QString, QString> roles;
    for (const record::Person& person : desk_.overview().people) {
        roles[QString::fromStdString(person.name)] = QString::fromStdString(person.role);
    }
    auto* dialog = new PersonDialog(roles, QString::fromStdString(control_.model().stamp().who), this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &PersonDialog::said, this, [this](const QString& name, const QString& role) {
        desk_.set_person({name.toStdString(), role.toStdString()});
    });
    dialog->open();
}

} // namespace pithward::bench
