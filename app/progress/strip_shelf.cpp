#include "app/progress/strip_shelf.h"

#include "app/bench/model/beside_window.h"
#include "app/progress/core_strip.h"

#include <algorithm>
#include <bit>
#include <cstring>
#include <mutex>

namespace pithward::bench {

namespace {

constexpr int scan_side = 1600; ///< Of a scan read for its cores, in pixels.
constexpr std::size_t most_strips = 400;
constexpr std::size_t most_wanted = 60; ///< More than fit on a screen.

std::int64_t revision_of(const std::shared_ptr<const SiteCore>& read) {
    return read ? read->revision : -1;
}

/// The whole scan, reduced; null where it can't be read or was stopped.
QImage reduced(const OpenedScan& scan, int reduction, const Work& work) {
    const QRect all(0, 0, scan.header.width, scan.header.height);
    if (!scan.coarse) {
        return scan.pixels(all, reduction).value_or(QImage());
    }
    QImage whole(all.size() / reduction, QImage::Format_RGB32);
    if (whole.isNull()) {
        return {};
    }
    whole.fill(Qt::gray);
    std::mutex one_at_a_time; // parts come from any thread
    const auto part = [&](int first_row, const QImage& rows) {
        const std::scoped_lock lock(one_at_a_time);
        const int height = std::min(rows.height(), whole.height() - first_row);
        const int width = std::min(rows.width(), whole.width());
        for (int y = 0; y < height; ++y) {
            std::memcpy(whole.scanLine(first_row + y), rows.constScanLine(y),
                        static_cast<std::size_t>(width) * sizeof(QRgb));
        }
    };
    return scan.coarse(reduction, part, work) ? whole : QImage();
}

/// A power of two, as scans are streamed by.
int reduction_of(const Scan& header) {
    const int most = std::min({std::max(header.width, header.height) / scan_side, header.width, header.height});
    return static_cast<int>(std::bit_floor(static_cast<unsigned>(std::max(1, most))));
}

} // namespace

StripShelf::StripShelf(const ProjectDesk& desk, QObject* parent)
    : QObject(parent)
    , desk_(desk) {
    pool_.setMaxThreadCount(1);
    connect(&desk_, &ProjectDesk::opened, this, &StripShelf::forget);
}

StripShelf::~StripShelf() {
    stop();
    pool_.clear();
    pool_.waitForDone();
}

void StripShelf::stop() {
    wanted_.clear();
    stop_.request_stop();
    ++generation_;
    running_.reset();
}

void StripShelf::forget() {
    stop();
    made_.clear();
    last_ = std::make_shared<LastScan>(); // what still runs keeps its own
}

QImage StripShelf::strip(const record::CoreEntry& core, const std::shared_ptr<const SiteCore>& read, QSize size) {
    if (core.core.scan.empty() || size.isEmpty()) {
        return {};
    }
    QImage old;
    if (const auto here = made_.find(core.id); here != made_.end()) {
        here->second.asked = ++clock_;
        if (here->second.revision == revision_of(read) && here->second.size == size) {
            return here->second.picture;
        }
        old = here->second.picture;
    }
    std::erase_if(wanted_, [&](const Wanted& one) { return one.core.id == core.id; });
    if (running_ != core.id) {
        wanted_.push_front({core, read, size});
        if (wanted_.size() > most_wanted) {
            wanted_.pop_back();
        }
        start_next();
    }
    return old; // better than none, until the new one comes
}

void StripShelf::start_next() {
    if (running_ || wanted_.empty()) {
        return;
    }
    Wanted next = std::move(wanted_.front());
    wanted_.pop_front();
    running_ = next.core.id;
    stop_ = {};
    const record::CoreId core = next.core.id;
    const auto make = [next = std::move(next), overview = desk_.overview(), opener = desk_.opener(),
                       allowed = desk_.allowed(), last = last_, stop = stop_.get_token()] {
        Made made{{}, revision_of(next.read), next.size, 0};
        if (last->name != next.core.core.scan || last->picture.isNull()) {
            const auto found = open_project_scan(overview, next.core, opener, allowed);
            if (!found) {
                return made;
            }
            last->name = next.core.core.scan;
            last->reduction = reduction_of(found->scan.header);
            last->picture = reduced(found->scan, last->reduction, Work{stop, {}, 1});
        }
        if (!last->picture.isNull()) {
            made.picture = next.read ? core_strip(last->picture, last->reduction, next.read->reading, next.size)
                                     : whole_strip(last->picture, next.size);
        }
        return made;
    };
    beside_window(pool_, this, make, [this, core, generation = generation_](Made made) {
        if (generation == generation_) {
            running_.reset();
            keep(core, std::move(made));
            start_next();
        }
    });
}

void StripShelf::keep(record::CoreId core, Made made) {
    made.asked = ++clock_;
    made_[core] = std::move(made);
    if (made_.size() > most_strips) {
        made_.erase(std::ranges::min_element(made_, {}, [](const auto& one) { return one.second.asked; }));
    }
    emit come(core);
}

} // namespace pithward::bench
