#pragma once

#include "app/bench/actions/actions.h"
#include "app/bench/control/bench_control.h"
#include "app/bench/control/core_editor.h"
#include "app/bench/control/path_editor.h"
#include "app/bench/control/pith_keeper.h"
#include "app/bench/control/scale_editor.h"
#include "app/bench/exporting/exports.h"
#include "app/bench/look/appearance.h"
#include "app/project/errand.h"
#include "app/project/project_desk.h"
#include "libcore/edit/joined_readings.h"
#include "libcore/progress/core_progress.h"

#include <QMainWindow>
#include <map>

class QLabel;
class QMenu;
class QStackedWidget;
class QToolBar;

namespace pithward::bench {

class CoreDetails;
class CoreList;
class FindingsList;
class MessageBar;
class PithPanel;
class ProgressPage;
class ProjectList;
class ReadingPanel;
class ReviewPage;
class ScanView;
class SeriesPlot;
class SitePage;
class StripLane;
class WindowMemory;

/// The window: puts the parts together and ties them. It decides nothing.
class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    explicit MainWindow(ScanOpener opener, Appearance& appearance, QWidget* parent = nullptr);
    ~MainWindow() override;

    /// Stands as it did when it was last closed, and remembers what is opened.
    void keep_in(WindowMemory& memory);

    [[nodiscard]] BenchControl& control() { return control_; }
    [[nodiscard]] CoreEditor& editor() { return editor_; }
    [[nodiscard]] PithKeeper& pith() { return pith_; }
    [[nodiscard]] ScanView& view() { return *view_; }
    [[nodiscard]] SeriesPlot& plot() { return *plot_; }
    [[nodiscard]] StripLane& strip() { return *strip_; }
    [[nodiscard]] MessageBar& messages() { return *messages_; }
    [[nodiscard]] Actions& actions() { return actions_; }
    [[nodiscard]] ProjectDesk& desk() { return desk_; }
    [[nodiscard]] Errand& errand() { return errand_; }
    [[nodiscard]] ReviewPage& review() { return *review_; }
    [[nodiscard]] SitePage& site() { return *site_; }
    [[nodiscard]] ProgressPage& progress() { return *progress_; }
    [[nodiscard]] ProjectList& project_list() { return *project_list_; }

    /// Lets the path of one core go on along that of another, as one edit. What can't be is told.
    void join(const CorePlace& outer, const CorePlace& inner, const Meeting& meeting);

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void changeEvent(QEvent* event) override;
    /// Waits until what was done is written.
    void closeEvent(QCloseEvent* event) override;

private:
    QWidget* build_bench();
    QWidget* build_panel();
    void build_status_bar();
    void bind_actions();
    void bind_edits();
    void bind_path();
    void bind_pith();
    void bind_scale();
    void bind_project();
    void bind_review();
    void bind_site();
    void bind_progress();
    /// Goes where a step is done, of a core or of the site.
    void take_step(progress::Step step, std::optional<record::CoreId> core);
    void open_for_work(record::CoreId core);
    /// The pages that a project has.
    enum class Front { Bench, Review, Site, Progress };
    void show_front(Front front);
    void show_history();
    void compare_readings();
    /// The core that is looked at, on the bench or in the review.
    [[nodiscard]] std::optional<record::CoreId> core_in_front() const;
    void open_queued();
    void open_goal(ReadingId reading);
    void go_to_goal();
    void zoom_in_front(double factor);
    void show_all_in_front();
    void step_finding(int by);
    void stop_work();
    /// The view of the bench, or that of the review where it is shown.
    [[nodiscard]] ScanView& view_in_front();
    void tie_project();
    void show_project();
    void show_details();
    void show_saved(int waiting);
    /// The scans outside of a project with edits that are in no exported file, by name.
    [[nodiscard]] QStringList not_kept() const;
    void ask_before_closing(const QStringList& scans);
    void say_done();
    void accept_reading();
    /// Whether the present core is one of a project; told where it is not.
    [[nodiscard]] bool in_project();
    [[nodiscard]] QString name_of_present() const;
    void ask_for_project();
    void bind_errands();
    void ask_for_new_project();
    void bind_settling();
    void settle_scans();
    /// Shows what is to be settled of a project's scans, if anything is.
    void settle_what_is_open();
    void measure_all();
    /// A command that writes a file of the project, which is asked for.
    struct OutputErrand {
        QString verb;
        QString title;
        QStringList filters;
        QString ending;
        QString doing;
        QString done; ///< With %1 for the file.
    };
    void ask_where(const OutputErrand& errand);
    void ask_for_report();
    void ask_for_package();
    /// What the package that was just written lacks, as a list.
    void show_missing();
    /// Shows where a column of the field sheet is filled in, for a core where one is named.
    void fill_in(const QString& core, const QString& column);
    [[nodiscard]] QString project_file() const;
    void ask_who();
    /// Shows which scan leads where, and asks whether it may be read.
    void ask_about_outside(record::CoreId core, const PlaceOutside& outside);
    void go_to_next_to_do();
    void take_ruler_tool();
    void show_scale();
    /// Runs with the last place under the cursor, or asks for one.
    void at_cursor(const std::function<void(ImagePoint)>& run);
    void tie_parts();
    void tie_edits();
    void tie_lanes();
    void follow_view();
    void go_to_ring(int number);
    /// Shows the scan that a part of the present core's path lies on; `there` runs when it is shown.
    void go_to_leg(std::size_t leg, std::function<void()> there);
    void bind_joining();
    void ask_how_it_goes_on();
    void ask_for_same_boundary(const CorePlace& outer, BoundaryId at, const CorePlace& inner);
    void settle(Finding::State state);
    void take_under_cursor();
    void ask_for_note();
    void show_menu(const QPoint& screen);
    [[nodiscard]] std::optional<BreakId> break_at(ImagePoint at) const;
    void ask_about_break(BreakId id);
    void fill_recent();
    void add_languages();
    void note_opened();
    void refresh();
    [[nodiscard]] BenchState bench_state() const;
    [[nodiscard]] BenchState review_state() const;
    [[nodiscard]] BenchState site_state() const;
    [[nodiscard]] BenchState progress_state() const;
    [[nodiscard]] BenchState state_in_front() const;
    void point_at_ring(int number);
    /// Says beneath the window what an edit did.
    void hint_at_edit(const QString& label);
    void ask_for_scans();
    void ask_for_export(const ExportFormat& format);
    void go_to_end(bool bark);
    void level_core();

    BenchControl control_;
    CoreEditor editor_;
    PathEditor path_;
    PithKeeper pith_;
    ScaleEditor scale_;
    ProjectDesk desk_;
    Errand errand_;
    Appearance& appearance_;
    Actions actions_;
    ScanView* view_;
    StripLane* strip_;
    SeriesPlot* plot_;
    ReadingPanel* reading_;
    PithPanel* pith_panel_;
    CoreList* cores_;
    ProjectList* project_list_;
    CoreDetails* details_;
    ReviewPage* review_;
    SitePage* site_;
    ProgressPage* progress_;
    FindingsList* findings_;
    MessageBar* messages_;
    QWidget* panel_ = nullptr;
    QWidget* side_ = nullptr;
    QWidget* project_part_ = nullptr; ///< Of the side: the list of the project's cores.
    QWidget* details_part_ = nullptr; ///< Of the side: what the field sheet says.
    QLabel* cores_heading_ = nullptr;
    QMenu* recent_ = nullptr;
    WindowMemory* memory_ = nullptr;
    QStringList missing_; ///< What the package that is being written lacks.
    QStringList noted_;   ///< Opened since the window came up.
    QStackedWidget* pages_ = nullptr;
    QLabel* hint_;
    QLabel* zoom_;
    QLabel* saved_;
    QToolBar* tools_ = nullptr;
    QObject* hold_ = nullptr;    ///< Tells of a key held down, also while parts of the window go.
    bool details_wanted_ = true; ///< Field data is to be seen where there is any.
    Front front_ = Front::Bench;
    /// Where to go when a reading is on the bench.
    struct Goal {
        ReadingId reading;
        ImagePoint at;
        bool as_slip = false; ///< A slip is noted there, which is to be chosen when it has come.
        bool seen = false;    ///< The view has gone there.
    };
    std::optional<Goal> goal_;
    std::function<void()> when_shown_;    ///< What is to be done on a scan as soon as it is shown.
    bool settle_when_opened_ = false;     ///< A project was just made: what of its scans doesn't match is to be shown.
    bool closing_ = false;                ///< The window is to close when all is written.
    bool leaving_ = false;                ///< It may close, and edits that are in no file may go.
    std::map<int, std::size_t> exported_; ///< How many edits a scan had when it was exported, by its id.
};

} // namespace pithward::bench
