#pragma once

#include "app/review/reading_pair.h"
#include "app/review/scan_fetcher.h"

#include <QDialog>
#include <memory>
#include <optional>
#include <vector>

class QComboBox;
class QLabel;
class QTreeWidget;

namespace pithward::bench {

class CoreViewer;

/// Two readings of a core, one above the other on the same wood: how far they agree, and each boundary that only one of
/// them has.
class ComparisonView : public QDialog {
    Q_OBJECT

public:
    ComparisonView(ProjectDesk& desk, record::CoreId core, QWidget* parent);
    ~ComparisonView() override;

    [[nodiscard]] QComboBox& choice(bool first) { return first ? *first_ : *second_; }
    [[nodiscard]] QTreeWidget& list() { return *list_; }
    [[nodiscard]] CoreViewer& viewer(bool first) { return first ? *upper_ : *lower_; }
    [[nodiscard]] QString words() const;

signals:
    void told(const QString& message);

private:
    void lay_out();
    /// The readings that can be chosen, the accepted one first.
    void fill_choices();
    void compare();
    void show_pair(ReadingPair pair);
    void show_no_pair(const Fault& fault);
    void show_wood();

    ProjectDesk& desk_;
    record::CoreEntry core_;
    ScanFetcher scans_;
    std::shared_ptr<const OpenedScan> scan_;
    std::optional<ReadingPair> pair_;
    std::vector<LoneBoundary> lone_;
    quint64 asked_ = 0;
    std::vector<record::ReadingEntry> compared_; ///< The two, as they were when they were compared.
    QComboBox* first_;
    QComboBox* second_;
    QLabel* words_;
    QTreeWidget* list_;
    CoreViewer* upper_;
    CoreViewer* lower_;
};

} // namespace pithward::bench
