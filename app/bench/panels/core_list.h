#pragma once

#include "app/bench/model/bench_model.h"

#include <QTreeWidget>

namespace pithward::bench {

/// The scans on the bench, and under each the cores read from it.
class CoreList : public QTreeWidget {
    Q_OBJECT

public:
    explicit CoreList(const BenchModel& model, QWidget* parent = nullptr);

signals:
    void scan_chosen(int id);
    /// A core of a scan.
    void core_chosen(int scan_id, int index);

private:
    void refill();
    void show_present();

    const BenchModel& model_;
};

} // namespace pithward::bench
