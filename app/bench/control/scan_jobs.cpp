#include "app/bench/control/scan_jobs.h"

#include <atomic>

namespace pithward::bench {

ScanJobs::ScanJobs(QObject* parent)
    : QObject(parent) {
    pool_.setMaxThreadCount(1);
    connect(
        this, &ScanJobs::reported, this,
        [this](quint64 job, double done) {
            if (running_ && running_->number == job) {
                emit progressed(done);
            }
        },
        Qt::QueuedConnection);
}

ScanJobs::~ScanJobs() {
    if (running_) {
        running_->stop.request_stop();
    }
    pool_.waitForDone();
}

void ScanJobs::cancel() {
    if (running_) {
        running_->stop.request_stop();
        running_.reset();
        emit finished(true);
    }
}

std::shared_ptr<ScanJobs::Job> ScanJobs::begin(const QString& title) {
    if (running_) {
        running_->stop.request_stop();
    }
    running_ = std::make_shared<Job>();
    running_->number = ++begun_;
    emit started(title);
    return running_;
}

Work ScanJobs::work_of(const std::shared_ptr<Job>& job) {
    // Whole per cents only: a kernel may report much more often than anybody can see.
    auto last = std::make_shared<std::atomic<int>>(-1);
    return Work{job->stop.get_token(), [this, number = job->number, last](double done) {
                    const int percent = static_cast<int>(done * 100.0);
                    if (last->exchange(percent) != percent) {
                        emit reported(number, done);
                    }
                }};
}

bool ScanJobs::finish(const std::shared_ptr<Job>& job) {
    if (job != running_) {
        return false; // cancelled, or replaced by another
    }
    running_.reset();
    emit finished(false);
    return true;
}

} // namespace pithward::bench
