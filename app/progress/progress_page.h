#pragma once

#include "app/progress/progress_model.h"
#include "app/project/project_desk.h"
#include "app/site/site_work.h"

#include <QImage>
#include <QWidget>
#include <set>
#include <string>
#include <vector>

class QAction;
class QCheckBox;
class QComboBox;
class QLabel;
class QPushButton;
class QSortFilterProxyModel;
class QStackedWidget;
class QTableView;

namespace pithward::bench {

class StageBars;
class StripShelf;

/// How far the work on each core of the project is, what stands against it, and the way to what is next.
class ProgressPage : public QWidget {
    Q_OBJECT

public:
    ProgressPage(ProjectDesk& desk, SiteWork& dating, QWidget* parent = nullptr);
    ~ProgressPage() override;

    /// Buttons for what is done with the whole site.
    void add_buttons(const std::vector<QAction*>& actions);
    /// The core that is chosen.
    [[nodiscard]] std::optional<record::CoreId> core() const;

    /// The first open finding of a core's reading: the reading and its place; nothing where none is open.
    [[nodiscard]] std::optional<std::pair<ReadingId, ImagePoint>> first_finding(record::CoreId core) const;

    [[nodiscard]] QTableView& table() { return *table_; }
    [[nodiscard]] const ProgressModel& model() const { return model_; }
    [[nodiscard]] const progress::SiteProgress& site() const { return site_; }
    /// The button that goes to what is next for the site, and the one of the core that is chosen.
    [[nodiscard]] QPushButton& site_button() { return *site_button_; }
    [[nodiscard]] QPushButton& core_button() { return *core_button_; }
    [[nodiscard]] QComboBox& order() { return *order_; }
    /// The small picture of a core, as the table shows it; null while it is not made.
    [[nodiscard]] QImage picture(record::CoreId core) const;
    /// What stands against the core that is chosen, in words.
    [[nodiscard]] QString story() const;

signals:
    /// The next step of a core is wanted; without one, of the site: to measure all, or the report.
    void step_wanted(pithward::progress::Step step, std::optional<pithward::record::CoreId> core);
    /// Another core is chosen.
    void shown_changed();
    void told(const QString& message);

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    QWidget* build_top();
    QWidget* build_order();
    QWidget* build_below();
    void build_table();
    void tie();
    void start_anew();
    void refresh();
    void look_for_scans();
    void put_rows();
    void show_core();
    void go_on_with_site();
    void go_on_with_core();
    void sort();
    void follow_sorting(int column, Qt::SortOrder order);
    [[nodiscard]] const ProgressRow* row_at(const QModelIndex& shown) const;
    [[nodiscard]] QImage picture_of(const ProgressRow& row, QSize pixels) const;

    ProjectDesk& desk_;
    SiteWork& dating_;
    StripShelf* strips_;
    ProgressModel model_;
    QSortFilterProxyModel* sorted_;
    progress::SiteProgress site_;
    SiteCores seen_;
    std::set<std::string> scans_there_;
    std::optional<record::CoreId> core_; ///< That is chosen, also while the rows are put anew.
    quint64 asked_ = 0;
    QStackedWidget* pages_;
    StageBars* bars_;
    QLabel* next_;
    QLabel* work_;
    QPushButton* site_button_;
    QWidget* buttons_;
    QComboBox* order_;
    QCheckBox* reversed_;
    QTableView* table_;
    QLabel* title_;
    QLabel* story_;
    QPushButton* core_button_;
};

} // namespace pithward::bench
