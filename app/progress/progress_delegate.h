#pragma once

#include <QImage>
#include <QStyledItemDelegate>
#include <functional>

namespace pithward::bench {

/// Draws the table of progress: stages as a form with words, and the wood.
class ProgressDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    /// The picture of a row of the model that is shown, at most as large as so many pixels; null where there is none.
    using Pictures = std::function<QImage(const QModelIndex& index, QSize pixels)>;

    ProgressDelegate(Pictures pictures, QObject* parent);
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    void paint_wood(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const;

    Pictures pictures_;
};

} // namespace pithward::bench
