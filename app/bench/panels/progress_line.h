#pragma once

#include "app/bench/control/scan_jobs.h"

#include <QElapsedTimer>
#include <QWidget>

class QAction;
class QLabel;
class QProgressBar;

namespace pithward::bench {

/// What runs beside the window, how far it is, and a button to stop it. Hidden while nothing runs.
class ProgressLine : public QWidget {
    Q_OBJECT

public:
    ProgressLine(const ScanJobs& jobs, QAction* cancel, QWidget* parent = nullptr);

    void begin(const QString& title);
    void show_done(double done);

private:
    QLabel* title_;
    QProgressBar* bar_;
    QLabel* left_;
    QElapsedTimer since_;
};

} // namespace pithward::bench
