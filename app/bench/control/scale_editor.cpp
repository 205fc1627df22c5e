#include "app/bench/control/scale_editor.h"

namespace pithward::bench {

ScaleEditor::ScaleEditor(BenchModel& model, ScanJobs& jobs, QObject* parent)
    : QObject(parent)
    , model_(model)
    , jobs_(jobs) {}

void ScaleEditor::read_ruler(const std::optional<RulerLine>& line) {
    const BenchScan* scan = model_.scan();
    if (scan == nullptr) {
        return;
    }
    using Read = Outcome<std::optional<RulerReading>>;
    jobs_.start<Read>(
        line ? tr("Reading the ruler") : tr("Looking for a ruler"),
        [ruler = scan->opened->ruler, line, told = scan->calibration](const Work& work) {
            return ruler(line, told, work);
        },
        [this, id = scan->id](const Read& read) {
            if (!read) {
                emit told(QString::fromStdString(read.error().line()));
            } else if (!*read) {
                emit told(tr("No ruler is seen on this scan. If there is one, draw a line along its marks (D)."));
            } else {
                model_.put_ruler(id, **read);
                if ((*read)->disagreement) {
                    emit told(QString::fromStdString(*(*read)->disagreement));
                }
                emit ruler_read();
            }
        });
}

void ScaleEditor::say(double dpi) {
    const BenchScan* scan = model_.scan();
    if (scan == nullptr) {
        return;
    }
    const auto calibration = believed_calibration(scan->opened->header, dpi);
    if (calibration) {
        use(*calibration);
    } else {
        emit told(QString::fromStdString(calibration.error().line()));
    }
}

void ScaleEditor::use(const Calibration& calibration) {
    if (const BenchScan* scan = model_.scan()) {
        model_.set_calibration(scan->id, calibration);
    }
}

} // namespace pithward::bench
