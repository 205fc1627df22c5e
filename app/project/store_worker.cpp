#include "app/project/store_worker.h"

#include "libcore/record/project.h"

#include <utility>

namespace pithward::bench {

StoreWorker::StoreWorker()
    : timer_(this) {
    constexpr int interval_ms = 300; // a change is to be seen within a second
    timer_.setInterval(interval_ms);
    connect(&timer_, &QTimer::timeout, this, &StoreWorker::look);
}

StoreWorker::~StoreWorker() = default;

void StoreWorker::take(std::unique_ptr<record::Project> project) {
    project_ = std::move(project);
    if (project_) {
        seen_ = project_->changes_by_others().value_or(0);
        timer_.start();
    } else {
        timer_.stop();
    }
}

void StoreWorker::look() {
    const auto now = project_->changes_by_others();
    if (now && *now != seen_) { // a fault is told where something is asked
        seen_ = *now;
        emit changed_by_others();
    }
}

} // namespace pithward::bench
