#pragma once

#include "app/bench/control/scan_jobs.h"
#include "app/bench/model/bench_model.h"

#include <QObject>

namespace pithward::bench {

/// The scale of the shown scan: by the file, by a person's word or by a ruler.
class ScaleEditor : public QObject {
    Q_OBJECT

public:
    ScaleEditor(BenchModel& model, ScanJobs& jobs, QObject* parent = nullptr);

    /// Reads the ruler along a line, or looks for one, beside the window.
    void read_ruler(const std::optional<RulerLine>& line);
    void say(double dpi);
    void use(const Calibration& calibration);

signals:
    void told(const QString& message);
    /// The ruler has been read and stands with the scan.
    void ruler_read();

private:
    BenchModel& model_;
    ScanJobs& jobs_;
};

} // namespace pithward::bench
