#include "app/site/site_work.h"

#include "app/bench/model/beside_window.h"
#include "app/site/site_dating.h"

namespace pithward::bench {

SiteWork::SiteWork(ProjectDesk& desk, QObject* parent)
    : QObject(parent)
    , desk_(desk) {
    pool_.setMaxThreadCount(1);
    connect(&desk_, &ProjectDesk::opened, this, &SiteWork::forget);
}

SiteWork::~SiteWork() {
    stop_.request_stop();
    pool_.clear();
    pool_.waitForDone();
}

void SiteWork::forget() {
    cancel();
    shelf_ = std::make_shared<SiteShelf>();
    dating_.reset();
    cores_ = {};
    known_ = false;
    ++asked_;
    emit changed();
}

void SiteWork::refresh() {
    ask(&SiteWork::take);
}

void SiteWork::look() {
    ask(nullptr);
}

void SiteWork::ask(void (SiteWork::*then)(SiteCores)) {
    if (!desk_.is_open()) {
        return;
    }
    desk_.store().ask<SiteCores>([shelf = shelf_](record::Project& project) { return shelf->cores(project); },
                                 [this, then, number = asked_](Outcome<SiteCores> cores) {
                                     if (number != asked_) {
                                         return;
                                     }
                                     if (!cores) {
                                         emit told(QString::fromStdString(cores.error().line()));
                                         return;
                                     }
                                     emit seen(*cores);
                                     if (then != nullptr) {
                                         (this->*then)(std::move(*cores));
                                     }
                                 });
}

void SiteWork::take(SiteCores cores) {
    if ((known_ || busy_) && same_readings(cores, cores_)) {
        return;
    }
    cancel();
    cores_ = cores;
    if (dated_series(cores) < least_dated_series) {
        dating_.reset();
        known_ = true;
        emit changed();
    } else {
        start(std::move(cores));
    }
}

void SiteWork::start(SiteCores cores) {
    stop_ = std::stop_source();
    busy_ = true;
    known_ = false;
    emit changed();
    const auto work = [cores = std::move(cores), stop = stop_.get_token()] {
        return std::make_shared<const SiteDating>(date_site(cores, {.stop = stop, .progress = {}, .threads = 0}));
    };
    beside_window(pool_, this, work, [this, number = ++number_](std::shared_ptr<const SiteDating> dating) {
        if (number == number_) {
            dating_ = std::move(dating);
            known_ = true;
            busy_ = false;
            emit changed();
        }
    });
}

void SiteWork::cancel() {
    if (busy_) {
        stop_.request_stop();
        ++number_;
        busy_ = false;
        emit changed();
    }
}

} // namespace pithward::bench
