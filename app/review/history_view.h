#pragma once

#include "app/review/scan_fetcher.h"

#include <QDialog>
#include <map>
#include <memory>
#include <optional>
#include <vector>

class QLabel;
class QPushButton;
class QTreeWidget;

namespace pithward::bench {

class CoreViewer;

/// Who did what to a core and when, the latest first; a reading as it was after each of its edits, to be looked at and
/// brought back.
class HistoryView : public QDialog {
    Q_OBJECT

public:
    HistoryView(ProjectDesk& desk, record::CoreId core, QWidget* parent);
    ~HistoryView() override;

    [[nodiscard]] QTreeWidget& list() { return *list_; }
    [[nodiscard]] CoreViewer& viewer() { return *viewer_; }
    [[nodiscard]] QPushButton& back() { return *back_; }

signals:
    void told(const QString& message);

private:
    /// All of a core's history, from the store.
    struct History {
        std::vector<record::HistoryEntry> entries; ///< Oldest first.
        std::map<ReadingId, Document> documents;
    };

    void refresh();
    void fill(History history);
    void show_entry();
    [[nodiscard]] const record::HistoryEntry* chosen() const;
    /// The reading as an entry left it; nothing where it is about none.
    [[nodiscard]] std::optional<Reading> reading_after(const record::HistoryEntry& entry) const;
    void bring_back();

    ProjectDesk& desk_;
    record::CoreEntry core_;
    ScanFetcher scans_;
    std::shared_ptr<const OpenedScan> scan_;
    History history_;
    QTreeWidget* list_;
    CoreViewer* viewer_;
    QLabel* words_;
    QPushButton* back_;
};

} // namespace pithward::bench
