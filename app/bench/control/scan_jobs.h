#pragma once

#include "app/bench/model/beside_window.h"
#include "libcore/specimen/work.h"

#include <QObject>
#include <QString>
#include <QThreadPool>
#include <functional>
#include <memory>
#include <stop_token>
#include <utility>

namespace pithward::bench {

/// Long work beside the window: one job at a time in a thread of its own, with progress and cancel. A new job takes the
/// place of the one that runs. A job gets plain values and gives a plain value; the result of a job that was cancelled
/// is dropped.
class ScanJobs : public QObject {
    Q_OBJECT

public:
    explicit ScanJobs(QObject* parent = nullptr);
    ~ScanJobs() override;

    /// Runs `work` beside the window and hands its result to `done` on the GUI thread.
    template <typename T>
    void start(const QString& title, std::function<T(const Work&)> work, std::function<void(T)> done) {
        const auto job = begin(title);
        const auto run = [work = std::move(work), how = work_of(job)] { return work(how); };
        beside_window(pool_, this, run, [this, job, done = std::move(done)](T result) {
            if (finish(job)) {
                done(std::move(result));
            }
        });
    }

    /// Asks the running job to stop. Never waits.
    void cancel();
    [[nodiscard]] bool busy() const { return running_ != nullptr; }

signals:
    void started(const QString& title);
    /// The share done, 0 to 1.
    void progressed(double done);
    /// The bench is idle again; `cancelled` when the last job was stopped.
    void finished(bool cancelled);
    /// For the class itself: from the working thread to the window's.
    void reported(quint64 job, double done);

private:
    struct Job {
        quint64 number = 0;
        std::stop_source stop;
    };
    std::shared_ptr<Job> begin(const QString& title);
    Work work_of(const std::shared_ptr<Job>& job);
    /// True when the job's result is still wanted.
    bool finish(const std::shared_ptr<Job>& job);

    quint64 begun_ = 0;
    std::shared_ptr<Job> running_;
    QThreadPool pool_;
};

} // namespace pithward::bench
