#pragma once

#include "app/bench/control/scan_jobs.h"
#include "app/bench/model/bench_model.h"
#include "libcore/edit/path_edits.h"
#include "libcore/edit/path_shapes.h"

#include <QObject>

namespace pithward::bench {

/// Other shapes for the present core's path. Each wish becomes one edit; where the path gets longer, what is new is
/// read beside the window first. What can't be done is told and all stays as it was.
class PathEditor : public QObject {
    Q_OBJECT

public:
    PathEditor(BenchModel& model, ScanJobs& jobs, QObject* parent = nullptr);

    void move(Vertex vertex, ImagePoint to);
    /// Bends the path: a new vertex before this one.
    void bend(Vertex before, ImagePoint at);
    void straighten(Vertex vertex);
    /// Goes on to a place from the end that is nearer to it.
    void extend(ImagePoint to);
    /// Lets the path step sideways along a boundary, to go on past a place near its line.
    void step_aside(BoundaryId along, ImagePoint to);

signals:
    void told(const QString& message);
    void edited(const QString& what);

private:
    void reshape(const Outcome<Path>& after, const QString& label);
    void read_beyond(Reading rerouted, PathEnd end, const QString& label);
    void tell(const Fault& fault);

    BenchModel& model_;
    ScanJobs& jobs_;
};

} // namespace pithward::bench
