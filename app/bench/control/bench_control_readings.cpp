#include "app/bench/control/bench_control.h"
#include "app/bench/model/hand_work.h"
#include "app/picture/ring_places.h"
#include "libcore/edit/reading_edits.h"

#include <algorithm>
#include <cmath>

// What reads cores: anew, along another path, or with other words for their wood.

namespace pithward::bench {

namespace {

/// True when a path runs along a core that is known: then it is another path for that core.
bool runs_on(const picture::MeasuredCore& core, const std::string& scan, const std::vector<ImagePoint>& path) {
    const auto apart = picture::distance_to_path(core.reading, scan, (path.front() + path.back()) * 0.5);
    return apart && *apart <= core.half_breadth_px;
}

bool starts_alike(const picture::MeasuredCore& core, const std::vector<ImagePoint>& path) {
    const ImagePoint apart = core.reading.path.legs.front().points.front() - path.front();
    return std::hypot(apart.x, apart.y) <= core.half_breadth_px;
}

} // namespace

void BenchControl::read_shown_scan() {
    const BenchScan* scan = model_.scan();
    if (scan == nullptr || !scan->calibration) {
        return;
    }
    if (scan->recorded && !scan->cores.empty()) {
        emit told(tr("The readings of a project stay. Draw a path (P) for a new one."));
        return;
    }
    jobs_.start<ReadCores>(
        tr("Finding and measuring cores"),
        [opened = scan->opened, calibration = *scan->calibration](const Work& work) {
            return read_cores(*opened, calibration, work);
        },
        [this, id = scan->id, revision = scan->revision](ReadCores read) {
            for (const Fault& fault : read.faults) {
                tell(fault);
            }
            const BenchScan* before = model_.find(id);
            if (read.damaged) {
                if (before != nullptr && before->documents.empty()) {
                    model_.remove_scan(id);
                    read_if_new(); // the scan that is shown instead has waited for its turn
                }
                return; // what was read while the file was sound stays
            }
            const bool none = read.cores.empty() && read.faults.empty();
            if (before != nullptr && !before->recorded && std::ranges::any_of(before->documents, touched_by_hand)) {
                emit told(tr("What was drawn or changed by hand stays as it is. Undo its changes first to have it "
                             "read anew."));
            }
            if (model_.put_cores(id, revision, std::move(read.cores)) && none) {
                emit told(tr("No core was seen on this scan. Draw its path by hand (P)."));
            }
        });
}

void BenchControl::read_drawn_path(std::vector<ImagePoint> from_bark) {
    const BenchScan* scan = model_.scan();
    if (scan == nullptr || from_bark.empty()) {
        return;
    }
    const std::string name = scan->opened->name();
    const auto core = std::ranges::find_if(
        scan->cores, [&](const picture::MeasuredCore& one) { return runs_on(one, name, from_bark); });
    const bool same_start = core != scan->cores.end() && starts_alike(*core, from_bark);
    reread(*scan, static_cast<std::size_t>(core - scan->cores.begin()), [&](ReadingRequest& request) {
        request.scan_name = name;
        request.path = std::move(from_bark);
        request.bark_end = BarkEnd{};
        if (!same_start) {
            request.last_year.reset(); // another outermost ring: its year is not known
        }
    });
}

void BenchControl::swap_ends() {
    reread_present([](ReadingRequest& request) {
        std::ranges::reverse(request.path);
        request.bark_end = BarkEnd{};
    });
}

void BenchControl::set_wood(WoodType wood) {
    if (model_.core() != nullptr && said_wood(model_.core()->reading) != wood) {
        reread_present([wood](ReadingRequest& request) { request.wood = wood; });
    }
}

void BenchControl::set_outer(OuterWood outer) {
    if (model_.core() != nullptr && said_outer(model_.core()->reading) != outer) {
        reread_present([outer](ReadingRequest& request) { request.outer = outer; });
    }
}

void BenchControl::set_last_year(std::optional<Year> year) {
    const auto done = model_.change([this, year](Document& document) {
        return document.make(pithward::set_last_year(document.reading(), year), model_.stamp());
    });
    if (!done) {
        tell(done.error());
    }
}

void BenchControl::reread_present(const std::function<void(ReadingRequest&)>& change) {
    const picture::MeasuredCore* core = model_.core();
    if (core == nullptr) {
        return;
    }
    if (!std::ranges::all_of(core->reading.path.legs,
                             [&](const Leg& leg) { return leg.scan == core->reading.path.legs.front().scan; })) {
        emit told(tr("This core goes on on another scan, and is not read again as a whole. Take that back first."));
        return;
    }
    reread(*model_.home(), static_cast<std::size_t>(model_.core_index()), change);
}

void BenchControl::reread(const BenchScan& home, std::size_t index,
                          const std::function<void(ReadingRequest&)>& change) {
    const BenchScan* scan = &home;
    double breadth_mm = 0.0;
    if (!scan->calibration) {
        emit told(tr("Say the scan's resolution first: widths need it."));
        return;
    }
    ReadingRequest request;
    std::string name;
    request.calibration = *scan->calibration;
    if (index < scan->cores.size()) {
        const picture::MeasuredCore& core = scan->cores[index];
        request = request_of(core.reading, *scan->calibration);
        name = core.reading.core;
        breadth_mm = 2.0 * core.half_breadth_px / scan->calibration->px_per_mm();
    }
    change(request);
    if (const auto fault = request.validate(scan->opened->header)) {
        tell(*fault);
        return;
    }
    jobs_.start<Outcome<picture::MeasuredCore>>(
        tr("Measuring the path"),
        [opened = scan->opened, request, breadth_mm, only_core = scan->cores.size() <= 1](const Work& work) {
            return read_path(*opened, request, breadth_mm, only_core, work);
        },
        [this, id = scan->id, revision = scan->revision, index, name](Outcome<picture::MeasuredCore> core) {
            if (!core) {
                tell(core.error());
                return;
            }
            core->reading.core = name;
            if (!model_.put_core(id, revision, index, std::move(*core), tr("Read the core again").toStdString())) {
                emit told(tr("The core was changed meanwhile, so the new reading was not taken. Try again."));
            }
        });
}

} // namespace pithward::bench
