#pragma once

#include "app/project/project_desk.h"
#include "app/site/site_work.h"
#include "app/site/year_window.h"

#include <QWidget>
#include <memory>
#include <optional>

class QAction;
class QLabel;
class QListWidget;
class QPushButton;
class QScrollArea;
class QStackedWidget;

namespace pithward::dating {
struct SlipPlace;
}

namespace pithward::bench {

class AgreementBand;
class ChronologyBand;
class SeriesBand;
class SlipPanel;
struct SiteDating;
struct SiteLine;

/// The site by its series: how each goes with the others through time, where a ring is missing or counted twice and
/// what can be done about it, and the chronology.
class SitePage : public QWidget {
    Q_OBJECT

public:
    explicit SitePage(ProjectDesk& desk, QWidget* parent = nullptr);
    ~SitePage() override;

    void add_buttons(QAction* see, QAction* accept, QAction* not_so, QAction* untold);
    /// Dates the site again where its readings have changed, when it is shown.
    void refresh();
    /// Looks at the readings only: the work's `seen` tells.
    void look() { work_.look(); }
    void cancel() { work_.cancel(); }
    void zoom(double factor) { years_.zoom(factor); }
    void show_all_years() { years_.show_all(); }
    /// The next slip, 1, or the one before, -1, of this series or another, round the end.
    void step(int by);

    /// Takes the change that is chosen, leaves all as it is, or says that nobody can tell: an edit of the reading, as
    /// a finding that is settled. Where all of a series fits other years, taking that dates it so.
    void settle(Finding::State state);
    /// Goes to the wood of what is shown. An unsettled slip becomes a finding of the reading, to be settled there.
    void see_wood();

    [[nodiscard]] bool busy() const { return work_.busy(); }
    [[nodiscard]] bool has_dating() const { return work_.dating() != nullptr; }
    /// The core that is shown.
    [[nodiscard]] std::optional<record::CoreId> core() const;
    /// A slip is shown, with a place.
    [[nodiscard]] bool slip_shown() const;
    /// There is something that can be taken: that slip, or other years for all of a series.
    [[nodiscard]] bool change_shown() const;

    /// Shows the series of a core, as soon as it is dated.
    void choose(record::CoreId core);

    [[nodiscard]] const SiteWork& work() const { return work_; }
    [[nodiscard]] SiteWork& work() { return work_; }
    [[nodiscard]] QListWidget& list() { return *list_; }
    [[nodiscard]] SlipPanel& slip() { return *slip_panel_; }
    [[nodiscard]] SeriesBand& series() { return *series_; }
    [[nodiscard]] YearWindow& years() { return years_; }
    /// What stands in the place of the pictures where there are none.
    [[nodiscard]] QString words_in_place() const;

signals:
    /// Something else is shown, or work began or ended.
    void shown_changed();
    void told(const QString& message);
    void hint(const QString& words);
    /// A place of a reading is wanted on the bench; `as_slip`, where a slip is noted.
    void bench_wanted(pithward::ReadingId reading, pithward::ImagePoint at, bool as_slip);

protected:
    void showEvent(QShowEvent* event) override;

private:
    QWidget* build_side();
    QWidget* build_pictures();
    void tie();
    void follow_work();
    void say_summary();
    void put_lines();
    void show_line(int row);
    void show_slip(int number);
    void open_year(int year);
    /// The finding that the slip which is shown makes at a place; with the id of the one that was made of it.
    [[nodiscard]] Finding finding_at(const dating::SlipPlace& place) const;
    void take_years(std::shared_ptr<const SiteDating> dating, const SiteCore& core);
    void note_slip(std::shared_ptr<const SiteDating> dating, const SiteCore& core, const Finding& finding);
    void say_year();
    [[nodiscard]] const SiteLine* line() const;
    [[nodiscard]] int slips_of(int row) const;

    ProjectDesk& desk_;
    SiteWork work_;
    YearWindow years_;
    std::optional<record::CoreId> core_; ///< That is shown, also while the site is dated anew.
    int slip_number_ = 0;
    QListWidget* list_;
    QLabel* heading_;
    QLabel* summary_;
    QLabel* legend_;
    QLabel* needed_;
    QPushButton* again_;
    QStackedWidget* pages_;
    AgreementBand* agreement_;
    QScrollArea* rows_;
    SeriesBand* series_;
    ChronologyBand* chronology_;
    SlipPanel* slip_panel_;
};

} // namespace pithward::bench
