#include "app/bench/look/language.h"
#include "app/bench/panels/message_bar.h"
#include "app/bench/window/main_window.h"
#include "app/bench/window/window_memory.h"

#include <QActionGroup>
#include <QFileInfo>
#include <QMenu>
#include <QMenuBar>

// What the window keeps from one day to the next.

namespace pithward::bench {

void MainWindow::keep_in(WindowMemory& memory) {
    memory_ = &memory;
    memory.restore(*this);
    QMenu* file = menuBar()->actions().front()->menu();
    recent_ = new QMenu(tr("Open &recent"), this);
    file->insertMenu(file->actions().value(file->actions().indexOf(actions_.at(ActionId::Open)) + 1), recent_);
    connect(recent_, &QMenu::aboutToShow, this, &MainWindow::fill_recent);
    fill_recent();
    add_languages();
}

void MainWindow::add_languages() {
    auto* menu = new QMenu(tr("&Language"), this);
    auto* choice = new QActionGroup(menu);
    const auto add = [&](const QString& name, const QString& code) {
        QAction* action = menu->addAction(name, this, [this, code] {
            memory_->choose_language(code);
            messages_->tell(tr("The window speaks this language when the program is started again."));
        });
        action->setCheckable(true);
        action->setChecked(memory_->language() == code);
        choice->addAction(action);
    };
    add(tr("As the &system"), {});
    for (const Language& language : languages()) {
        add(QString::fromUtf8(language.name), language.code);
    }
    for (const QAction* top : menuBar()->actions()) {
        if (top->menu() != nullptr && top->menu()->actions().contains(actions_.at(ActionId::ZoomIn))) {
            top->menu()->addMenu(menu); // a part of the view, as the colours are
        }
    }
}

void MainWindow::fill_recent() {
    recent_->clear();
    for (const QString& path : memory_->recent()) {
        QAction* action = recent_->addAction(QFileInfo(path).fileName(), this, [this, path] { control_.open({path}); });
        action->setToolTip(path);
        action->setStatusTip(path);
    }
    recent_->setEnabled(!recent_->isEmpty());
}

void MainWindow::note_opened() {
    if (memory_ == nullptr) {
        return;
    }
    QStringList fresh;
    const QString project = desk_.is_open() ? QFileInfo(desk_.overview().file).absoluteFilePath() : QString();
    if (!project.isEmpty() && !noted_.contains(project)) {
        fresh << project;
    }
    for (const BenchScan& scan : control_.model().scans()) {
        const QString path = QFileInfo(QString::fromStdString(scan.opened->path)).absoluteFilePath();
        if (!scan.recorded && !noted_.contains(path)) { // of a project the project is noted
            fresh << path;
        }
    }
    if (!fresh.isEmpty()) {
        noted_ << fresh;
        memory_->note_opened(fresh);
        fill_recent();
    }
}

} // namespace pithward::bench
