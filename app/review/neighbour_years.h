#pragma once

#include "app/picture/measured_core.h"

#include <QString>
#include <QWidget>
#include <vector>

namespace pithward::bench {

/// The widths of some years as bars, core under core: filled for the one that is looked at, hollow for the others of
/// its tree. The years in question stand in a frame.
class NeighbourYears : public QWidget {
    Q_OBJECT

public:
    struct Row {
        QString name;
        std::vector<Ring> rings; ///< Those of the years shown, youngest first.
    };

    explicit NeighbourYears(QWidget* parent = nullptr);

    /// Shows the rings about ring `number` of a core, and those of the same years in the others. Others are shown
    /// where both are dated.
    void show_about(const QString& name, const picture::MeasuredCore& core, int number,
                    const std::vector<std::pair<QString, const RingSeries*>>& others);
    void show_nothing();
    [[nodiscard]] const std::vector<Row>& rows() const { return rows_; }
    /// The same in words, for those who can't see it.
    [[nodiscard]] QString in_words() const;

protected:
    void paintEvent(QPaintEvent* event) override;
    [[nodiscard]] QSize sizeHint() const override;

private:
    void paint_row(QPainter& painter, const Row& row, bool present, double top, double height) const;
    [[nodiscard]] double column_breadth() const;
    /// Left side of the column of a ring, by its year or number.
    [[nodiscard]] std::optional<double> column_of(const Ring& ring) const;

    std::vector<Row> rows_; ///< The first is the one that is looked at.
    int number_ = 0;
};

} // namespace pithward::bench
