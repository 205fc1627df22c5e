#include "app/bench/model/bench_model.h"

#include "app/bench/model/edit_stamp.h"
#include "app/bench/model/hand_work.h"
#include "app/picture/legs.h"
#include "libcore/edit/edits_between.h"
#include "libcore/edit/reading_edits.h"

#include <algorithm>
#include <tuple>
#include <utility>

namespace pithward::bench {

namespace {

/// What the program reads is sound (read_path sees to it), so it can be opened.
Document opened(const picture::MeasuredCore& core) {
    return Document::open(core.reading).value_or(Document{});
}

} // namespace

BenchModel::BenchModel(QObject* parent)
    : QObject(parent) {
    connect(
        this, &BenchModel::noted, this, [this] { emit changed(std::exchange(gathered_, Changes())); },
        Qt::QueuedConnection);
}

void BenchModel::let_recorded_only_be_seen(bool only_seen) {
    recorded_only_seen_ = only_seen;
    note(ShownScan);
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
    return core_at({home_, core_});
}

const picture::MeasuredCore* BenchModel::core_at(const CorePlace& place) const {
    const BenchScan* scan = find(place.scan);
    return scan != nullptr && place.index >= 0 && place.index < static_cast<int>(scan->cores.size())
               ? &scan->cores[static_cast<std::size_t>(place.index)]
               : nullptr;
}

const BenchScan* BenchModel::named(const std::string& scan) const {
    const auto found = std::ranges::find(scans_, scan, [](const BenchScan& one) { return one.opened->name(); });
    return found == scans_.end() ? nullptr : &*found;
}

std::vector<CorePlace> BenchModel::cores_on_shown() const {
    std::vector<CorePlace> places;
    const BenchScan* shown = scan();
    for (const BenchScan& scan : scans_) {
        for (std::size_t i = 0; shown != nullptr && i < scan.cores.size(); ++i) {
            const Reading& reading = scan.cores[i].reading;
            if (picture::lies_on(reading, shown->opened->name()) && !taken_in(reading)) {
                places.push_back({scan.id, static_cast<int>(i)});
            }
        }
    }
    return places;
}

bool BenchModel::taken_in(const Reading& reading) const {
    return std::ranges::any_of(scans_, [&](const BenchScan& scan) {
        return std::ranges::any_of(
            scan.cores, [&](const picture::MeasuredCore& core) { return picture::goes_on_in(core.reading, reading); });
    });
}

const Document* BenchModel::document() const {
    return core() != nullptr ? &home()->documents[static_cast<std::size_t>(core_)] : nullptr;
}

const Document* BenchModel::find_reading(ReadingId id) const {
    for (const BenchScan& scan : scans_) {
        for (const Document& document : scan.documents) {
            if (scan.recorded && document.reading().id == id) {
                return &document;
            }
        }
    }
    return nullptr;
}

EditStamp BenchModel::stamp() const {
    EditStamp stamp = stamp_now();
    if (!who_.empty()) {
        stamp.who = who_;
    }
    return stamp;
}

int BenchModel::add_scan(OpenedScan opened, std::optional<Calibration> calibration, bool recorded) {
    BenchScan scan;
    scan.id = next_id_++;
    scan.opened = std::make_shared<const OpenedScan>(std::move(opened));
    scan.calibration = calibration;
    scan.recorded = recorded;
    scans_.push_back(std::move(scan));
    note(ScanList);
    return scans_.back().id;
}

void BenchModel::remove_scan(int id) {
    std::erase_if(scans_, [id](const BenchScan& scan) { return scan.id == id; });
    if (id == shown_) {
        const int first = scans_.empty() ? 0 : scans_.front().id;
        shown_ = find(shown_before_) != nullptr ? shown_before_ : first;
    }
    if (id == home_ || core() == nullptr || !picture::lies_on(core()->reading, scan()->opened->name())) {
        home_ = shown_;
        core_ = 0;
    }
    note(ScanList | ShownScan | Cores | PresentCore);
}

void BenchModel::show_scan(int id) {
    if (id != shown_ && find(id) != nullptr) {
        shown_before_ = shown_;
        shown_ = id;
        if (core() == nullptr || !picture::lies_on(core()->reading, scan()->opened->name())) {
            home_ = id;
            core_ = 0;
        }
        note(ShownScan | Cores | PresentCore);
    }
}

void BenchModel::show_core(const CorePlace& place) {
    const picture::MeasuredCore* wanted = core_at(place);
    if (wanted == nullptr) {
        return;
    }
    const bool in_view = scan() != nullptr && picture::lies_on(wanted->reading, scan()->opened->name());
    if (place != CorePlace{home_, core_}) {
        home_ = place.scan;
        core_ = place.index;
        note(PresentCore);
    }
    if (!in_view) {
        show_scan(place.scan);
    }
}

void BenchModel::show_reading(ReadingId id) {
    for (const BenchScan& scan : scans_) {
        const auto found = std::ranges::find(scan.documents, id, [](const Document& one) { return one.reading().id; });
        if (scan.recorded && found != scan.documents.end()) {
            show_core({scan.id, static_cast<int>(found - scan.documents.begin())});
            return;
        }
    }
}

bool BenchModel::put_reading(int id, Document document) {
    BenchScan* scan = at(id);
    auto core = picture::measured(document.reading());
    if (scan == nullptr || !core) {
        return false;
    }
    const auto here =
        std::ranges::find(scan->documents, document.reading().id, [](const Document& one) { return one.reading().id; });
    const auto index = here - scan->documents.begin();
    if (here == scan->documents.end()) {
        scan->cores.push_back(std::move(*core));
        scan->documents.push_back(std::move(document));
        note(PresentCore);
    } else {
        core->half_breadth_px = std::max(core->half_breadth_px, scan->cores[index].half_breadth_px);
        scan->cores[index] = std::move(*core);
        *here = std::move(document);
    }
    scan->searched = true;
    ++scan->revision;
    note(ScanList | Cores);
    return true;
}

void BenchModel::set_calibration(int id, const Calibration& calibration) {
    BenchScan* scan = at(id);
    if (scan == nullptr || scan->calibration == calibration) {
        return;
    }
    scan->calibration = calibration;
    if (calibration.source == Calibration::Source::Given) {
        scan->said = calibration;
    }
    const std::string name = scan->opened->name();
    for (BenchScan& home : scans_) {
        for (std::size_t i = 0; i < home.cores.size(); ++i) {
            if (picture::lies_on(home.cores[i].reading, name)) {
                // A core that can't be measured by it keeps the scale that it has; its panel tells which.
                std::ignore = change(home, i, [&](Document& document) {
                    return document.make(change_calibration(document.reading(), name, calibration), stamp());
                });
            }
        }
    }
    ++scan->revision;
    note(ShownScan | Cores | PresentCore);
}

void BenchModel::put_field(int id, const FieldData& field) {
    BenchScan* scan = at(id);
    if (scan != nullptr && scan->opened->field != field) {
        auto opened = std::make_shared<OpenedScan>(*scan->opened);
        opened->field = field;
        scan->opened = std::move(opened);
        note(Cores);
    }
}

void BenchModel::put_ruler(int id, const RulerReading& ruler) {
    if (BenchScan* scan = at(id)) {
        scan->ruler = ruler;
        note(ShownScan);
    }
}

bool BenchModel::put_cores(int id, std::uint64_t revision, std::vector<picture::MeasuredCore> cores) {
    BenchScan* scan = at(id);
    if (scan == nullptr || scan->revision != revision) {
        return false;
    }
    if (scan->recorded) {
        scan->searched = true;
        emit proposed(id, cores);
        return true;
    }
    taken_back_.clear();
    keep_hand_work(*scan);
    const auto kept = std::ssize(scan->cores);
    for (picture::MeasuredCore& core : cores) {
        const bool known = std::any_of(scan->cores.begin(), scan->cores.begin() + kept,
                                       [&](const picture::MeasuredCore& one) { return same_core(one, core.reading); });
        if (!known) {
            scan->documents.push_back(opened(core));
            scan->cores.push_back(std::move(core));
        }
    }
    scan->searched = true;
    ++scan->revision;
    if (id == home_) {
        core_ = 0;
    }
    note(ScanList | Cores | PresentCore);
    return true;
}

bool BenchModel::put_core(int id, std::uint64_t revision, std::size_t index, picture::MeasuredCore core,
                          const std::string& label) {
    BenchScan* scan = at(id);
    if (scan == nullptr || scan->revision != revision) {
        return false;
    }
    if (index < scan->cores.size()) {
        scan->cores[index].half_breadth_px = core.half_breadth_px;
        const auto changed = change(*scan, index, [&](Document& document) {
            return document.make(edits_between(document.reading(), core.reading, label), stamp());
        });
        if (!changed) {
            return false;
        }
    } else if (scan->recorded) {
        emit proposed(id, {std::move(core)});
        return true;
    } else {
        taken_back_.clear();
        index = scan->cores.size();
        scan->documents.push_back(opened(core));
        scan->cores.push_back(std::move(core));
    }
    ++scan->revision;
    if (id == home_ || id == shown_) {
        home_ = id;
        core_ = static_cast<int>(index);
    }
    note(ScanList | Cores | PresentCore);
    return true;
}

Outcome<bool> BenchModel::change(const std::function<Outcome<bool>(Document&)>& act) {
    return change(present(), act);
}

Outcome<bool> BenchModel::change(const CorePlace& place, const std::function<Outcome<bool>(Document&)>& act) {
    BenchScan* scan = at(place.scan);
    return scan != nullptr && core_at(place) != nullptr ? change(*scan, static_cast<std::size_t>(place.index), act)
                                                        : false;
}

bool BenchModel::drawn_last() const {
    const BenchScan* scan = home();
    return scan != nullptr && !scan->recorded && core() != nullptr && drawn_and_unchanged(*document());
}

bool BenchModel::take_back_drawn() {
    BenchScan* scan = at(home_);
    if (!drawn_last()) {
        return false;
    }
    const auto here = static_cast<std::ptrdiff_t>(core_);
    taken_back_.push_back({present(), std::move(scan->cores[static_cast<std::size_t>(here)]),
                           std::move(scan->documents[static_cast<std::size_t>(here)])});
    scan->cores.erase(scan->cores.begin() + here);
    scan->documents.erase(scan->documents.begin() + here);
    core_ = std::max(0, core_ - 1);
    ++scan->revision;
    note(ScanList | Cores | PresentCore);
    return true;
}

bool BenchModel::bring_back_drawn() {
    BenchScan* scan = taken_back_.empty() ? nullptr : at(taken_back_.back().place.scan);
    if (scan == nullptr) {
        return false;
    }
    TakenBack last = std::move(taken_back_.back());
    taken_back_.pop_back();
    const auto here = std::min<std::ptrdiff_t>(last.place.index, std::ssize(scan->cores));
    scan->cores.insert(scan->cores.begin() + here, std::move(last.core));
    scan->documents.insert(scan->documents.begin() + here, std::move(last.document));
    home_ = scan->id;
    core_ = static_cast<int>(here);
    ++scan->revision;
    note(ScanList | Cores | PresentCore);
    return true;
}

void BenchModel::leave_unread(int id) {
    if (BenchScan* scan = at(id)) {
        scan->searched = true;
    }
}

Outcome<bool> BenchModel::change(BenchScan& scan, std::size_t index,
                                 const std::function<Outcome<bool>(Document&)>& act) {
    if (scan.recorded && recorded_only_seen_) {
        return fail("", "the project can only be looked at", "ask for permission to write to its file and folder");
    }
    Document document = scan.documents[index];
    auto changed = act(document);
    if (!changed || !*changed) {
        return changed;
    }
    auto again = picture::measured(document.reading());
    if (!again) {
        return tl::unexpected(again.error());
    }
    again->half_breadth_px = scan.cores[index].half_breadth_px;
    taken_back_.clear(); // a new edit ends redo
    const std::size_t known = scan.documents[index].log().size();
    scan.cores[index] = std::move(*again);
    scan.documents[index] = std::move(document);
    ++scan.revision;
    note(ScanList | Cores);
    if (scan.recorded) {
        const Document& now = scan.documents[index];
        const std::vector<EditRecord> fresh(now.log().begin() + static_cast<std::ptrdiff_t>(known), now.log().end());
        for (const EditRecord& record : fresh) {
            emit made(now.reading().id, record);
        }
    }
    return true;
}

void BenchModel::note(Changes changes) {
    const bool first = !gathered_;
    gathered_ |= changes;
    if (first) {
        emit noted();
    }
}

} // namespace pithward::bench
