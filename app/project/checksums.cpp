#include "app/project/checksums.h"

#include "app/bench/model/beside_window.h"
#include "libcore/record/scan_entry.h"

namespace pithward::bench {

Checksums::Checksums() {
    pool_.setMaxThreadCount(1); // the disk is shared with the scan that is looked at
}

Checksums::~Checksums() {
    stop_.request_stop();
    pool_.clear();
    pool_.waitForDone();
}

void Checksums::compute(const record::ScanToSum& scan) {
    if (!asked_.insert(scan.path).second) {
        return;
    }
    Work work;
    work.stop = stop_.get_token();
    beside_window(
        pool_, this, [scan, work] { return record::scan_entry(scan.file, scan.path, work); },
        [this](const Outcome<record::ScanEntry>& entry) {
            if (entry) {
                emit computed(*entry);
            }
        });
}

} // namespace pithward::bench
