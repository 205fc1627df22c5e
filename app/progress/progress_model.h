#pragma once

#include "app/progress/progress_rows.h"

#include <QAbstractTableModel>
#include <vector>

namespace pithward::bench {

/// The cores of the project as a table: a picture, the stages, what stands against each and what comes next.
class ProgressModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Name, Tree, Wood, FirstStage, Against = FirstStage + 5, Next, ColumnCount };
    enum Role {
        SortRole = Qt::UserRole, ///< What a column is sorted by.
        FormRole,                ///< How far a stage is, as a number; nothing in other columns.
    };

    using QAbstractTableModel::QAbstractTableModel;

    /// Other rows; those that are the same cores stay where they are.
    void put(std::vector<ProgressRow> rows);
    /// The picture of a core has come.
    void picture_came(record::CoreId core);
    [[nodiscard]] const std::vector<ProgressRow>& rows() const { return rows_; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;

private:
    [[nodiscard]] QString text(const ProgressRow& row, int column) const;
    [[nodiscard]] static QVariant sort_key(const ProgressRow& row, int column, const QString& text);

    std::vector<ProgressRow> rows_;
    bool several_sites_ = false;
};

} // namespace pithward::bench
