#pragma once

#include "app/project/project_desk.h"
#include "libcore/formats/field_sheet_columns.h"

#include <QWidget>
#include <vector>

class QLabel;
class QPushButton;

namespace pithward::bench {

class DetailField;

/// What the field sheet says of the present core, its tree and its site, beside the scan. In a project that can be
/// written to, each field can be changed, with the site's own values as proposals; what was changed here can be taken
/// back, one after the other. Outside a project it is shown as the sheet has it.
class CoreDetails : public QWidget {
    Q_OBJECT

public:
    explicit CoreDetails(ProjectDesk& desk, const BenchModel& model, QWidget* parent = nullptr);
    /// To the first field.
    void take_focus();
    /// To the field of a column of the sheet, or the first where it has none.
    void take_focus(const std::string& column);

    /// Whether there is anything to show.
    [[nodiscard]] bool has_details() const;

signals:
    void told(const QString& message);

private:
    struct Change {
        record::CoreEntry before;
        record::CoreEntry after;
        QString what;
    };

    void refresh();
    void show_values(const formats::SheetRow& row, bool can_change);
    void show_others(const Core& core);
    void propose(DetailField& field) const;
    [[nodiscard]] const record::CoreEntry* present() const;
    void take(DetailField& field);
    void take_back();
    void change(Change wish, const QString& label, std::function<void(Change&&)> made);

    ProjectDesk& desk_;
    const BenchModel& model_;
    std::vector<DetailField*> fields_;
    QLabel* whose_;
    QLabel* others_;
    QPushButton* back_;
    std::vector<Change> changes_; ///< Made here since the project was opened.
};

} // namespace pithward::bench
