#include "app/bench/actions/key_sheet.h"
#include "app/bench/exporting/export_dialog.h"
#include "app/bench/model/demo_site.h"
#include "app/bench/model/hand_work.h"
#include "app/bench/model/scan_files.h"
#include "app/bench/panels/core_list.h"
#include "app/bench/panels/findings_list.h"
#include "app/bench/panels/handbook.h"
#include "app/bench/panels/message_bar.h"
#include "app/bench/panels/reading_panel.h"
#include "app/bench/scan_view/hold_to_hide.h"
#include "app/bench/scan_view/scan_view.h"
#include "app/bench/tools/draw_path_tool.h"
#include "app/bench/window/main_window.h"
#include "app/picture/ring_places.h"

#include <QFileDialog>
#include <QLabel>

// How the window's parts are tied to each other and to the actions.

namespace pithward::bench {

void MainWindow::bind_actions() {
    using enum ActionId;
    actions_.on(Open, [this] { ask_for_scans(); });
    for (const ExportFormat& format : export_formats()) {
        actions_.on(format.action, [this, &format] { ask_for_export(format); });
    }
    actions_.on(OpenDemo, [this] { control_.open({demo_site()}); });
    actions_.on(Quit, [this] { close(); });
    actions_.on(FindCores, [this] { control_.read_shown_scan(); });
    actions_.on(DrawPath, [this] {
        view_->take_tool(std::make_unique<DrawPathTool>(),
                         [this](const auto& path) { control_.read_drawn_path(path); });
        view_->setFocus();
    });
    actions_.on(SwapEnds, [this] { control_.swap_ends(); });
    actions_.on(SetYear, [this] {
        panel_->show();
        reading_->focus_year();
    });
    actions_.on(NextFinding, [this] { step_finding(1); });
    actions_.on(PreviousFinding, [this] { step_finding(-1); });
    actions_.on(NextCore, [this] { control_.step_core(1); });
    actions_.on(PreviousCore, [this] { control_.step_core(-1); });
    actions_.on(Cancel, [this] { stop_work(); });
    actions_.on(ZoomIn, [this] { zoom_in_front(1.5); });
    actions_.on(ZoomOut, [this] { zoom_in_front(1.0 / 1.5); });
    actions_.on(ShowAll, [this] { show_all_in_front(); });
    actions_.on(ShowPixels, [this] { view_in_front().show_pixels(); });
    actions_.on(GoToBark, [this] { go_to_end(true); });
    actions_.on(GoToPith, [this] { go_to_end(false); });
    actions_.on(TurnLeft, [this] { view_in_front().turn(-90.0); });
    actions_.on(TurnRight, [this] { view_in_front().turn(90.0); });
    actions_.on(LevelCore, [this] { level_core(); });
    actions_.on(FoldPanel, [this] { panel_->setVisible(panel_->isHidden()); });
    actions_.on(ColoursSystem, [this] { appearance_.use(Scheme::System); });
    actions_.on(ColoursLight, [this] { appearance_.use(Scheme::Light); });
    actions_.on(ColoursDark, [this] { appearance_.use(Scheme::Dark); });
    actions_.on(Keys, [this] { (new KeySheet(this))->open(); });
    actions_.on(ShowHandbook, [this] {
        auto* handbook = new Handbook(this); // beside the window, so that its steps can be followed
        handbook->setAttribute(Qt::WA_DeleteOnClose);
        handbook->show();
    });
    bind_edits();
    bind_path();
    bind_joining();
    bind_pith();
    bind_scale();
    bind_project();
    bind_review();
    bind_site();
    bind_progress();
    bind_errands();
    bind_settling();
}

void MainWindow::tie_parts() {
    connect(&control_, &BenchControl::told, messages_, &MessageBar::tell);
    connect(&control_, &BenchControl::done, hint_, &QLabel::setText);
    connect(&control_.model(), &BenchModel::changed, this, [this](BenchModel::Changes changes) {
        refresh();
        if (changes & BenchModel::ScanList) {
            note_opened();
        }
        if (changes & BenchModel::ShownScan) {
            hint_->clear();
        }
        const BenchScan* scan = control_.model().scan();
        // The arrow keys are the scan's, unless somebody walks through the list or is asked for the resolution.
        if ((changes & BenchModel::ShownScan) && !cores_->hasFocus() && scan != nullptr && scan->calibration) {
            view_->setFocus();
        }
    });
    connect(&control_.jobs(), &ScanJobs::started, this, &MainWindow::refresh);
    connect(&control_.jobs(), &ScanJobs::started, hint_, &QLabel::clear);
    connect(&control_.jobs(), &ScanJobs::finished, this, &MainWindow::refresh);

    connect(view_, &ScanView::failed, messages_, &MessageBar::tell);
    connect(view_, &ScanView::hint_changed, hint_, &QLabel::setText);
    connect(view_, &ScanView::core_clicked, &control_.model(), &BenchModel::show_core);
    tie_lanes();
    connect(findings_, &FindingsList::finding_chosen, this, [this](int number, std::size_t leg, ImagePoint at) {
        go_to_leg(leg, [this, number, at] {
            view_->go_to(at);
            view_->pick_finding(number);
        });
    });
    connect(cores_, &CoreList::scan_chosen, &control_, &BenchControl::show_scan);
    connect(cores_, &CoreList::core_chosen, this, [this](int scan, int index) { control_.show_core({scan, index}); });
    connect(reading_, &ReadingPanel::year_set, &control_, &BenchControl::set_last_year);
    connect(reading_, &ReadingPanel::wood_chosen, &control_, &BenchControl::set_wood);
    connect(reading_, &ReadingPanel::year_done, view_, qOverload<>(&QWidget::setFocus));
    connect(reading_, &ReadingPanel::outer_chosen, &control_, &BenchControl::set_outer);
    tie_edits();
    tie_project();
    auto* hold = new HoldToHide(this);
    connect(hold, &HoldToHide::held, this, [this](bool held) { view_in_front().hide_marks(held); });
    hold_ = hold;
}

MainWindow::~MainWindow() {
    delete hold_;
}

void MainWindow::level_core() {
    const picture::MeasuredCore* core = control_.model().core();
    if (core == nullptr) {
        return;
    }
    const std::string shown = control_.model().scan()->opened->name();
    for (const Leg& leg : core->reading.path.legs) {
        if (leg.scan == shown && leg.points.size() > 1) {
            view_->level(leg.points.front(), leg.points.back());
            return;
        }
    }
}

void MainWindow::go_to_end(bool bark) {
    const picture::MeasuredCore* core = control_.model().core();
    if (core != nullptr && !core->reading.path.legs.empty()) {
        const auto& legs = core->reading.path.legs;
        const ImagePoint end = bark ? legs.front().points.front() : legs.back().points.back();
        go_to_leg(bark ? 0 : legs.size() - 1, [this, end] { view_->go_to(end); });
    }
}

void MainWindow::ask_for_scans() {
    auto* dialog = new QFileDialog(this, tr("Open scans"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setFileMode(QFileDialog::ExistingFiles);
    dialog->setNameFilters({tr("Scans (%1)").arg(scan_patterns().join(' ')), tr("All files (*)")});
    connect(dialog, &QFileDialog::filesSelected, &control_, &BenchControl::open);
    dialog->open();
}

void MainWindow::ask_for_export(const ExportFormat& format) {
    const BenchScan* scan = control_.model().home();
    if (scan == nullptr) {
        return;
    }
    ExportInput input{scan->opened, scan->cores};
    for (const BenchScan& other : control_.model().scans()) {
        input.other_scans.push_back(other.opened->path);
    }
    auto* dialog = new ExportDialog(std::move(input), format, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &ExportDialog::written, this, [this, id = scan->id](const QString& path) {
        hint_->setText(tr("Written to %1").arg(path));
        const BenchScan* written = control_.model().find(id);
        exported_[id] = written != nullptr ? hand_edits(*written) : 0;
    });
    dialog->open();
}

} // namespace pithward::bench
