#pragma once

#include "app/project/project_desk.h"
#include "app/review/queue_items.h"
#include "app/review/review_case.h"
#include "app/review/scan_fetcher.h"

#include <QWidget>
#include <memory>
#include <optional>
#include <vector>

class QAction;
class QLabel;
class QLineEdit;
class QListWidget;

namespace pithward::bench {

class CoreViewer;
class NeighbourYears;

/// What waits for the second person in the whole project, the worst first: each finding with the wood around it, the
/// light profile, the neighbouring years of the tree's other cores and what the program saw; a verdict, and the next.
class ReviewPage : public QWidget {
    Q_OBJECT

public:
    explicit ReviewPage(ProjectDesk& desk, QWidget* parent = nullptr);
    ~ReviewPage() override;

    /// Buttons for what can be done, beside the comment.
    void add_buttons(const std::vector<QAction*>& actions);
    /// Looks again at what waits, when it is shown.
    void refresh();
    /// Another list: what waits for the second person, or for the analysts.
    void show_other_list();

    /// Shows the first of what waits in a reading for the second person.
    void choose(ReadingId reading);

    /// Says so of what is shown, with the comment, and goes on. Nothing is judged unseen.
    void judge(Verdict verdict);
    void focus_comment();
    /// What is shown, to be opened on the bench: its reading, and its place where it is a finding.
    [[nodiscard]] std::optional<std::pair<ReadingId, std::optional<ImagePoint>>> place() const;

    /// Something waits for the second person and is shown.
    [[nodiscard]] bool can_judge() const { return whom_ == Waits::SecondPerson && case_.has_value(); }
    [[nodiscard]] const std::vector<QueueItem>& items() const { return items_; }
    [[nodiscard]] const std::optional<ReviewCase>& shown() const { return case_; }
    [[nodiscard]] CoreViewer& viewer() { return *viewer_; }
    [[nodiscard]] QListWidget& list() { return *list_; }
    [[nodiscard]] const NeighbourYears& years() const { return *years_; }
    [[nodiscard]] QString story() const;

signals:
    /// Another item is shown, or none.
    void shown_changed();
    void told(const QString& message);

protected:
    void showEvent(QShowEvent* event) override;

private:
    QWidget* build_side();
    QWidget* build_case();
    void put_items(std::vector<QueueItem> items);
    void show_row(int row);
    void show_case(const QueueItem& item, ReviewCase one);
    void show_wood(const QueueItem& item);
    void show_years(const QueueItem& item);
    void show_nothing();
    void tell(const Fault& fault);

    ProjectDesk& desk_;
    ScanFetcher scans_;
    std::shared_ptr<ReadingShelf> shelf_; ///< Used in the store's thread alone.
    Waits whom_ = Waits::SecondPerson;
    std::vector<QueueItem> items_;
    std::optional<QueueItem> item_; ///< What is shown, or on its way.
    std::optional<ReviewCase> case_;
    std::optional<ReadingId> wanted_; ///< To be shown when the list has come.
    quint64 asked_ = 0;
    QListWidget* list_;
    QLabel* heading_;
    QLabel* title_;
    QLabel* provenance_;
    QLabel* story_;
    CoreViewer* viewer_;
    NeighbourYears* years_;
    QLineEdit* comment_;
    QWidget* buttons_;
};

} // namespace pithward::bench
