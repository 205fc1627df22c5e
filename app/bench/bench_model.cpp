#include "app/bench/bench_model.h"

#include <algorithm>
#include <utility>

namespace pithward::bench {

BenchModel::BenchModel(QObject* parent)
    : QObject(parent) {
    connect(
        this, &BenchModel::noted, this, [this] { emit changed(std::exchange(gathered_, Changes())); },
        Qt::QueuedConnection);
}

const BenchScan* BenchModel::find(int id) const {
    const auto scan = std::ranges::find(scans_, id, &BenchScan::id);
    return scan == scans_.end() ? nullptr : &*scan;
}

BenchScan* BenchModel::at(int id) {
    const auto scan = std::ranges::find(scans_, id, &BenchScan::id);
    return scan == scans_.end() ? nullptr : &*scan;
}

const picture::MeasuredCore* BenchModel::core() const {
    const BenchScan* shown = scan();
    return shown != nullptr && core_ >= 0 && core_ < static_cast<int>(shown->cores.size()) ? &shown->cores[core_]
                                                                                           : nullptr;
}

int BenchModel::add_scan(OpenedScan opened, std::optional<Calibration> calibration) {
    BenchScan scan;
    scan.id = next_id_++;
    scan.opened = std::make_shared<const OpenedScan>(std::move(opened));
    scan.calibration = calibration;
    scans_.push_back(std::move(scan));
    note(ScanList);
    return scans_.back().id;
}

void BenchModel::remove_scan(int id) {
    std::erase_if(scans_, [id](const BenchScan& scan) { return scan.id == id; });
    if (id == shown_) {
        const int first = scans_.empty() ? 0 : scans_.front().id;
        shown_ = find(shown_before_) != nullptr ? shown_before_ : first;
        core_ = 0;
    }
    note(ScanList | ShownScan | Cores | PresentCore);
}

void BenchModel::show_scan(int id) {
    if (id != shown_ && find(id) != nullptr) {
        shown_before_ = shown_;
        shown_ = id;
        core_ = 0;
        note(ShownScan | Cores | PresentCore);
    }
}

void BenchModel::show_core(int index) {
    const BenchScan* shown = scan();
    if (shown != nullptr && index != core_ && index >= 0 && index < static_cast<int>(shown->cores.size())) {
        core_ = index;
        note(PresentCore);
    }
}

void BenchModel::set_calibration(int id, const Calibration& calibration) {
    BenchScan* scan = at(id);
    if (scan == nullptr || scan->calibration == calibration) {
        return;
    }
    scan->calibration = calibration;
    scan->cores.clear();
    scan->searched = false;
    ++scan->revision;
    note(ShownScan | Cores | PresentCore);
}

bool BenchModel::put_cores(int id, std::uint64_t revision, std::vector<picture::MeasuredCore> cores) {
    BenchScan* scan = at(id);
    if (scan == nullptr || scan->revision != revision) {
        return false;
    }
    scan->cores = std::move(cores);
    scan->searched = true;
    ++scan->revision;
    if (id == shown_) {
        core_ = 0;
    }
    note(ScanList | Cores | PresentCore);
    return true;
}

bool BenchModel::put_core(int id, std::uint64_t revision, std::size_t index, picture::MeasuredCore core) {
    BenchScan* scan = at(id);
    if (scan == nullptr || scan->revision != revision) {
        return false;
    }
    if (index < scan->cores.size()) {
        scan->cores[index] = std::move(core);
    } else {
        index = scan->cores.size();
        scan->cores.push_back(std::move(core));
    }
    ++scan->revision;
    if (id == shown_) {
        core_ = static_cast<int>(index);
    }
    note(ScanList | Cores | PresentCore);
    return true;
}

Outcome<void> BenchModel::set_last_year(std::optional<Year> year) {
    BenchScan* scan = at(shown_);
    const picture::MeasuredCore* present = core();
    if (scan == nullptr || present == nullptr || present->reading.last_year == year) {
        return {};
    }
    Reading dated = present->reading;
    dated.last_year = year;
    auto again = picture::measured(std::move(dated));
    if (!again) {
        return tl::unexpected(again.error());
    }
    again->half_breadth_px = present->half_breadth_px;
    scan->cores[core_] = std::move(*again);
    ++scan->revision;
    note(ScanList | Cores);
    return {};
}

void BenchModel::note(Changes changes) {
    const bool first = !gathered_;
    gathered_ |= changes;
    if (first) {
        emit noted();
    }
}

} // namespace pithward::bench
