#include "app/review/scan_fetcher.h"

#include "app/bench/model/beside_window.h"
#include "app/project/project_scan.h"

namespace pithward::bench {

namespace {

constexpr std::size_t most_kept = 8;

} // namespace

ScanFetcher::ScanFetcher(const ProjectDesk& desk, QObject* parent)
    : QObject(parent)
    , desk_(desk) {
    pool_.setMaxThreadCount(1);
    connect(&desk_, &ProjectDesk::opened, this, [this] { kept_.clear(); });
}

ScanFetcher::~ScanFetcher() {
    pool_.clear();
    pool_.waitForDone();
}

void ScanFetcher::fetch(const record::CoreEntry& core, std::function<void(const Opened&)> done) {
    const quint64 number = ++asked_;
    if (const auto here = kept_.find(core.core.scan); here != kept_.end()) {
        done(here->second);
        return;
    }
    const auto open = [overview = desk_.overview(), core, opener = desk_.opener(), allowed = desk_.allowed()] {
        return open_project_scan(overview, core, opener, allowed);
    };
    beside_window(pool_, this, open,
                  [this, number, name = core.core.scan, done = std::move(done)](Outcome<ProjectScan> found) {
                      if (number != asked_) {
                          return;
                      }
                      if (!found) {
                          done(tl::unexpected(found.error()));
                          return;
                      }
                      if (kept_.size() >= most_kept) {
                          kept_.clear();
                      }
                      kept_[name] = std::make_shared<const OpenedScan>(std::move(found->scan));
                      done(kept_[name]);
                  });
}

} // namespace pithward::bench
