#include "app/bench/window/main_window.h"

#include "app/bench/lanes/series_plot.h"
#include "app/bench/lanes/strip_lane.h"
#include "app/bench/look/icons.h"
#include "app/bench/look/layout.h"
#include "app/bench/model/demo_site.h"
#include "app/bench/panels/core_list.h"
#include "app/bench/panels/findings_list.h"
#include "app/bench/panels/message_bar.h"
#include "app/bench/panels/pith_panel.h"
#include "app/bench/panels/progress_line.h"
#include "app/bench/panels/reading_panel.h"
#include "app/bench/panels/resolution_bar.h"
#include "app/bench/panels/start_page.h"
#include "app/bench/scan_view/scan_view.h"
#include "app/progress/progress_page.h"
#include "app/project/core_details.h"
#include "app/project/project_list.h"
#include "app/review/review_page.h"
#include "app/site/site_page.h"
#include "libcore/edit/edit_log.h"

#include <QDragEnterEvent>
#include <QLabel>
#include <QMenuBar>
#include <QMimeData>
#include <QStackedWidget>
#include <QStatusBar>
#include <QToolBar>

namespace pithward::bench {

MainWindow::MainWindow(ScanOpener opener, Appearance& appearance, QWidget* parent)
    : QMainWindow(parent)
    , control_(opener)
    , editor_(control_.model())
    , path_(control_.model(), control_.jobs())
    , pith_(control_.model())
    , scale_(control_.model(), control_.jobs())
    , desk_(control_, std::move(opener))
    , appearance_(appearance)
    , actions_(this)
    , view_(new ScanView(control_.model()))
    , strip_(new StripLane(control_.model()))
    , plot_(new SeriesPlot(control_.model()))
    , reading_(new ReadingPanel(control_.model()))
    , pith_panel_(new PithPanel(control_.model()))
    , cores_(new CoreList(control_.model()))
    , project_list_(new ProjectList(desk_))
    , details_(new CoreDetails(desk_, control_.model()))
    , review_(new ReviewPage(desk_))
    , site_(new SitePage(desk_))
    , progress_(new ProgressPage(desk_, site_->work()))
    , findings_(new FindingsList(control_.model()))
    , messages_(new MessageBar)
    , hint_(new QLabel)
    , zoom_(new QLabel)
    , saved_(new QLabel) {
    setAcceptDrops(true);
    setWindowIcon(drawn_icon("core", palette().color(QPalette::WindowText)));
    resize(1400, 900);
    actions_.fill(menuBar());
    auto* bar = tools_ = addToolBar(tr("Tools"));
    bar->setObjectName("tools");
    bar->setMovable(false);
    bar->setIconSize({22, 22});
    actions_.fill(bar);

    actions_.at(ActionId::OpenDemo)->setVisible(!demo_site().isEmpty());
    pages_ = new QStackedWidget;
    pages_->addWidget(new StartPage(actions_.at(ActionId::Open), actions_.at(ActionId::OpenProject),
                                    actions_.at(ActionId::NewProject), actions_.at(ActionId::OpenDemo)));
    pages_->addWidget(build_bench());
    pages_->addWidget(review_);
    pages_->addWidget(site_);
    pages_->addWidget(progress_);
    setCentralWidget(column({messages_, pages_}));
    build_status_bar();
    bind_actions();
    tie_parts();
    actions_.draw_icons(palette().color(QPalette::WindowText));
    refresh();
}

QWidget* MainWindow::build_bench() {
    auto* resolution = new ResolutionBar(control_.model());
    connect(resolution, &ResolutionBar::dpi_given, &control_, &BenchControl::use_dpi);
    panel_ = build_panel();
    auto* below = divided("plot-and-panel", Qt::Horizontal, {{plot_, 3}, {panel_, 4}});
    auto* bench = column({resolution, divided("scan-and-lanes", Qt::Vertical, {{view_, 11}, {strip_, 4}, {below, 7}})});
    project_part_ = column({heading(tr("Project")), project_list_});
    details_part_ = column({heading(tr("Field data")), scrolled(details_)});
    side_ = divided("project-and-details", Qt::Vertical, {{project_part_, 3}, {details_part_, 4}});
    return divided("side-and-bench", Qt::Horizontal, {{side_, 4}, {bench, 17}});
}

QWidget* MainWindow::build_panel() {
    cores_heading_ = heading(tr("Cores"));
    auto* facts = column({cores_heading_, cores_, heading(tr("Reading")), scrolled(reading_)});
    auto* findings = divided(
        "findings-and-pith", Qt::Vertical,
        {{column({heading(tr("Findings")), findings_}), 3}, {column({heading(tr("Pith")), scrolled(pith_panel_)}), 2}});
    return divided("facts-and-findings", Qt::Horizontal, {{facts, 6}, {findings, 5}});
}

void MainWindow::build_status_bar() {
    statusBar()->addWidget(hint_, 1);
    auto* progress = new ProgressLine(control_.jobs(), actions_.at(ActionId::Cancel));
    connect(&errand_, &Errand::started, progress, &ProgressLine::begin);
    connect(&errand_, &Errand::progressed, progress, &ProgressLine::show_done);
    connect(&errand_, &Errand::finished, progress, &QWidget::hide);
    statusBar()->addPermanentWidget(progress);
    statusBar()->addPermanentWidget(saved_);
    statusBar()->addPermanentWidget(zoom_);
    saved_->setAccessibleName(tr("What is written to the project"));
    hint_->setAccessibleName(tr("What is under the cursor"));
    zoom_->setAccessibleName(tr("Scale of the view"));
}

void MainWindow::refresh() {
    const BenchModel& model = control_.model();
    const BenchScan* scan = model.scan();
    const bool at_work = scan != nullptr || desk_.is_open();
    const bool bench = front_ == Front::Bench;
    pages_->setCurrentIndex(bench ? (at_work ? 1 : 0) : 1 + static_cast<int>(front_));
    tools_->setVisible(bench);
    zoom_->setVisible(bench);
    setWindowTitle(scan != nullptr ? tr("%1 – Pithward").arg(QString::fromStdString(scan->opened->name()))
                                   : tr("Pithward"));
    show_project();
    actions_.follow(state_in_front());
}

BenchState MainWindow::state_in_front() const {
    switch (front_) {
    case Front::Bench:
        return bench_state();
    case Front::Review:
        return review_state();
    case Front::Site:
        return site_state();
    case Front::Progress:
        return progress_state();
    }
    return {};
}

BenchState MainWindow::bench_state() const {
    const BenchModel& model = control_.model();
    const BenchScan* scan = model.scan();
    const Document* document = model.document();
    const std::string who = model.stamp().who;
    return {.scan = scan != nullptr,
            .scale = scan != nullptr && scan->calibration,
            .core = model.core() != nullptr,
            .boundary = editor_.in_hand() != nullptr || view_->under_cursor(),
            .finding = findings_->count() > 0,
            .undo = model.drawn_last() || (document != nullptr && next_to_undo(document->log(), who)),
            .redo = model.can_bring_back() || (document != nullptr && next_to_redo(document->log(), who)),
            .work = control_.jobs().busy() || errand_.busy(),
            .view = scan != nullptr,
            .project = desk_.is_open(),
            .recorded = desk_.present().has_value(),
            .queue = false,
            .picture = false,
            .place = false,
            .only_seen = model.only_seen()};
}

BenchState MainWindow::review_state() const {
    const bool shown = review_->shown().has_value();
    return {.work = control_.jobs().busy() || errand_.busy(),
            .view = shown,
            .project = true,
            .recorded = shown,
            .queue = shown,
            .only_seen = !desk_.overview().can_change};
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (event->mimeData()->hasUrls()) {
        event->acceptProposedAction();
    }
}

void MainWindow::dropEvent(QDropEvent* event) {
    QStringList paths;
    for (const QUrl& url : event->mimeData()->urls()) {
        if (url.isLocalFile()) {
            paths << url.toLocalFile();
        }
    }
    control_.open(paths);
}

void MainWindow::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange) {
        actions_.draw_icons(palette().color(QPalette::WindowText));
    }
    QMainWindow::changeEvent(event);
}

} // namespace pithward::bench
