#pragma once

#include "app/bench/model/bench_model.h"

#include <QFrame>

class QLabel;
class QSpinBox;

namespace pithward::bench {

/// Asks for the resolution of a scan whose file does not tell it, or tells what can't be believed.
class ResolutionBar : public QFrame {
    Q_OBJECT

public:
    explicit ResolutionBar(const BenchModel& model, QWidget* parent = nullptr);

signals:
    void dpi_given(double dpi);

private:
    void refresh();

    const BenchModel& model_;
    QLabel* question_;
    QSpinBox* dpi_;
    int asked_for_ = 0;
};

} // namespace pithward::bench
