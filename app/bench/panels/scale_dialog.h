#pragma once

#include "app/bench/model/bench_model.h"

#include <QDialog>

class QDoubleSpinBox;
class QGridLayout;
class QLabel;
class QPushButton;

namespace pithward::bench {

/// Who says what of the shown scan's scale, which one is used, and whether they agree.
class ScaleDialog : public QDialog {
    Q_OBJECT

public:
    explicit ScaleDialog(const BenchModel& model, QWidget* parent = nullptr);

signals:
    void dpi_said(double dpi);
    void chosen(const pithward::Calibration& calibration);
    void ruler_wanted();
    void line_wanted();

private:
    QPushButton* add_source(QGridLayout* grid, int row, const QString& name, QWidget* value);
    void refresh();

    const BenchModel& model_;
    QLabel* in_use_;
    QLabel* file_;
    QDoubleSpinBox* said_;
    QLabel* ruler_;
    QLabel* warning_;
    QPushButton* use_file_;
    QPushButton* use_said_;
    QPushButton* use_ruler_;
    QPushButton* look_ = nullptr;
    QPushButton* draw_ = nullptr;
};

} // namespace pithward::bench
