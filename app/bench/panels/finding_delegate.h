#pragma once

#include <QStyledItemDelegate>

namespace pithward::bench {

/// Draws a finding: its title in bold, what is to be said about it wrapped below.
class FindingDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    static constexpr int body_role = Qt::UserRole;

    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace pithward::bench
