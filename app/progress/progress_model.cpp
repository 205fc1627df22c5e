#include "app/progress/progress_model.h"

#include "app/bench/look/wording.h"
#include "app/progress/progress_words.h"

#include <algorithm>
#include <optional>

namespace pithward::bench {

namespace {

std::optional<progress::Stage> stage_of(int column) {
    const int place = column - ProgressModel::FirstStage;
    return place >= 0 && place < static_cast<int>(progress::all_stages.size())
               ? std::optional(progress::all_stages[static_cast<std::size_t>(place)])
               : std::nullopt;
}

/// Within a stage, what is less far comes first.
int how_far_in_order(progress::HowFar how) {
    using enum progress::HowFar;
    switch (how) {
    case NotYet:
        return 0;
    case WantsLook:
        return 1;
    case Partly:
        return 2;
    case Done:
        return 3;
    }
    return 0;
}

} // namespace

void ProgressModel::put(std::vector<ProgressRow> rows) {
    const bool same = std::ranges::equal(
        rows, rows_, [](const ProgressRow& a, const ProgressRow& b) { return a.core.id == b.core.id; });
    const auto other_site = [&](const ProgressRow& row) { return row.core.site.id != rows.front().core.site.id; };
    const bool several_sites = std::ranges::any_of(rows, other_site);
    if (same) {
        rows_ = std::move(rows);
        several_sites_ = several_sites;
        if (!rows_.empty()) {
            emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
        }
        return;
    }
    beginResetModel();
    rows_ = std::move(rows);
    several_sites_ = several_sites;
    endResetModel();
}

void ProgressModel::picture_came(record::CoreId core) {
    const auto row = std::ranges::find(rows_, core, [](const ProgressRow& one) { return one.core.id; });
    if (row != rows_.end()) {
        const QModelIndex place = index(static_cast<int>(row - rows_.begin()), Wood);
        emit dataChanged(place, place, {Qt::DecorationRole});
    }
}

int ProgressModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int ProgressModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(ColumnCount);
}

QString ProgressModel::text(const ProgressRow& row, int column) const {
    if (const auto stage = stage_of(column)) {
        return words_of(row, *stage);
    }
    switch (column) {
    case Name:
        return QString::fromStdString(row.core.core.id);
    case Tree: {
        QStringList parts;
        for (const std::string& part :
             {several_sites_ ? row.core.site.id : std::string(), row.core.tree.id, row.core.tree.species}) {
            if (!part.empty()) {
                parts << QString::fromStdString(part);
            }
        }
        return parts.join(", ");
    }
    case Against:
        return against_in_short(row);
    case Next:
        return words_of(row.progress.next);
    default:
        return {};
    }
}

QVariant ProgressModel::sort_key(const ProgressRow& row, int column, const QString& text) {
    if (column == FirstStage + static_cast<int>(progress::Stage::Dated) && row.first_year) {
        return *row.first_year + 1'000'000 * how_far_in_order(row.progress.at(progress::Stage::Dated));
    }
    if (const auto stage = stage_of(column)) {
        const int within = *stage == progress::Stage::Measured ? row.rings : 0;
        return within + 1'000'000 * how_far_in_order(row.progress.at(*stage));
    }
    if (column == Against) {
        return static_cast<int>(row.progress.against.size());
    }
    return column == Next ? QVariant(static_cast<int>(row.progress.next)) : QVariant(text);
}

QVariant ProgressModel::data(const QModelIndex& index, int role) const {
    const ProgressRow& row = rows_[static_cast<std::size_t>(index.row())];
    const auto stage = stage_of(index.column());
    switch (role) {
    case Qt::DisplayRole:
        return text(row, index.column());
    case Qt::ToolTipRole:
        if (stage) {
            return spoken(row, *stage);
        }
        return index.column() == Against ? against_in_full(row) : in_full(row.core.site, row.core.tree, row.core.core);
    case Qt::AccessibleTextRole:
        if (index.column() == Wood) {
            return tr("Picture of the core %1").arg(QString::fromStdString(row.core.core.id));
        }
        return stage ? spoken(row, *stage) : text(row, index.column());
    case SortRole:
        return sort_key(row, index.column(), text(row, index.column()));
    case FormRole:
        return stage ? QVariant(static_cast<int>(row.progress.at(*stage))) : QVariant();
    default:
        return {};
    }
}

QVariant ProgressModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) {
        return QAbstractTableModel::headerData(section, orientation, role);
    }
    if (const auto stage = stage_of(section)) {
        return title_of(*stage);
    }
    switch (section) {
    case Name:
        return tr("Core");
    case Tree:
        return tr("Tree");
    case Wood:
        return tr("Wood");
    case Against:
        return tr("Against it");
    default:
        return tr("What is next");
    }
}

} // namespace pithward::bench
