#pragma once

#include "app/bench/model/bench_model.h"

#include <QWidget>

class QLabel;

namespace pithward::bench {

/// What is known of the present core's pith: the numbers with their intervals, and what published methods say.
class PithPanel : public QWidget {
    Q_OBJECT

public:
    explicit PithPanel(const BenchModel& model, QWidget* parent = nullptr);

private:
    void refresh();

    const BenchModel& model_;
    QLabel* rings_;
    QLabel* distance_;
    QLabel* year_;
    QLabel* others_;
};

} // namespace pithward::bench
