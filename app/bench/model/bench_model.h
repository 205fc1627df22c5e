#pragma once

#include "app/bench/model/opened_scan.h"
#include "app/picture/measured_core.h"
#include "libcore/edit/document.h"

#include <QFlags>
#include <QObject>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

namespace pithward::bench {

/// One scan on the bench with what has been read from it.
struct BenchScan {
    int id = 0; ///< Stays the same while other scans come and go.
    std::shared_ptr<const OpenedScan> opened;
    std::optional<Calibration> calibration; ///< Nothing: the file's tag is not believed and nobody has said.
    std::optional<Calibration> said;        ///< What a person has said of the scale.
    std::optional<RulerReading> ruler;      ///< What a ruler on the scan says.
    std::vector<picture::MeasuredCore> cores;
    std::vector<Document> documents; ///< One for each of the cores: the door to its changes, with their log.
    bool searched = false;           ///< The program has looked for cores.
    bool recorded = false;           ///< Its readings are kept in a project.
    std::uint64_t revision = 0;      ///< Goes up with every change of this scan.
};

/// Where a core stands on the bench.
struct CorePlace {
    int scan = 0;  ///< The id of its home.
    int index = 0; ///< Among the cores there.
    friend bool operator==(const CorePlace&, const CorePlace&) = default;
};

/// Everything that is on the bench. All changes go through its functions, on the GUI thread; everybody else reads.
/// Changes are gathered: `changed` comes once when control returns to the event loop.
class BenchModel : public QObject {
    Q_OBJECT

public:
    enum Change {
        ScanList = 1,    ///< Scans came or went.
        ShownScan = 2,   ///< Another scan is shown, or its scale is another.
        Cores = 4,       ///< Readings of the shown scan changed.
        PresentCore = 8, ///< Another core is the present one.
    };
    Q_DECLARE_FLAGS(Changes, Change)

    explicit BenchModel(QObject* parent = nullptr);

    [[nodiscard]] const std::vector<BenchScan>& scans() const { return scans_; }
    [[nodiscard]] const BenchScan* find(int id) const;
    /// The scan that is shown; null on an empty bench.
    [[nodiscard]] const BenchScan* scan() const { return find(shown_); }
    /// The scan that the present core belongs to: the shown one, or one from which its path goes on on the shown one.
    [[nodiscard]] const BenchScan* home() const { return find(home_); }
    /// The present core; null when there is none.
    [[nodiscard]] const picture::MeasuredCore* core() const;
    /// Its place among the cores of its home.
    [[nodiscard]] int core_index() const { return core_; }
    /// Every core with a part of its path on the shown scan, but for those that another one has taken in.
    [[nodiscard]] std::vector<CorePlace> cores_on_shown() const;
    /// Whether another core's path goes on in this reading.
    [[nodiscard]] bool taken_in(const Reading& reading) const;
    /// The scan of this name; null when it is not on the bench.
    [[nodiscard]] const BenchScan* named(const std::string& scan) const;
    /// The document behind the present core; null when there is none.
    [[nodiscard]] const Document* document() const;

    /// The document of a reading that a project keeps; null when it is not on the bench.
    [[nodiscard]] const Document* find_reading(ReadingId id) const;
    /// The core of a place; null when there is none.
    [[nodiscard]] const picture::MeasuredCore* core_at(const CorePlace& place) const;

    /// Says that readings that a project keeps may only be looked at, or may be changed again.
    void let_recorded_only_be_seen(bool only_seen);
    /// Whether the shown scan's readings may be looked at, not changed.
    [[nodiscard]] bool only_seen() const { return recorded_only_seen_ && scan() != nullptr && scan()->recorded; }

    /// Who works here; the system's user unless said.
    void set_person(const std::string& who) { who_ = who; }
    [[nodiscard]] EditStamp stamp() const;

    /// Puts a scan on the bench and answers with its id. Of a `recorded` one the edits are told (`made`), and what is
    /// read anew is told (`proposed`) and not taken: it comes by `put_reading` when the project has it.
    int add_scan(OpenedScan opened, std::optional<Calibration> calibration, bool recorded = false);
    /// A reading as its project has it, in place of the one with its id or as a new one. False where the scan is gone
    /// or the reading can't be measured.
    bool put_reading(int id, Document document);
    /// Takes a scan off the bench; the one that was shown before it is shown again.
    void remove_scan(int id);
    /// The present core stays present where its path has a part on that scan.
    void show_scan(int id);
    void show_core(const CorePlace& place);
    void show_reading(ReadingId id);

    /// The scale to measure a scan with. Cores that are read keep their boundaries and are measured anew, each by an
    /// edit that can be undone.
    void set_calibration(int id, const Calibration& calibration);
    /// What the field sheet says of its core by now.
    void put_field(int id, const FieldData& field);
    void put_ruler(int id, const RulerReading& ruler);
    /// A result of work that was begun at `revision`. False when the scan has changed since or is gone: then nothing is
    /// done.
    bool put_cores(int id, std::uint64_t revision, std::vector<picture::MeasuredCore> cores);
    /// A result for one core. That of a core that is there comes in as an edit under this label, so that it can be
    /// undone; `index` past the end adds one.
    bool put_core(int id, std::uint64_t revision, std::size_t index, picture::MeasuredCore core,
                  const std::string& label);
    /// Changes the present core through its document. False where nothing changed. Refused as `Document` says, or where
    /// the changed reading can't be measured; then all is as before.
    Outcome<bool> change(const std::function<Outcome<bool>(Document&)>& act);
    /// The same for any core of the bench.
    Outcome<bool> change(const CorePlace& place, const std::function<Outcome<bool>(Document&)>& act);
    [[nodiscard]] CorePlace present() const { return {home_, core_}; }
    /// Whether the present core is one that a person drew, with no edit left in effect: then undo takes it away.
    [[nodiscard]] bool drawn_last() const;
    /// Takes the present core away where `drawn_last`; `bring_back_drawn` brings it back, until something else changes.
    bool take_back_drawn();
    bool bring_back_drawn();
    [[nodiscard]] bool can_bring_back() const { return !taken_back_.empty(); }
    /// Nobody need look for cores on this scan.
    void leave_unread(int id);

signals:
    void changed(pithward::bench::BenchModel::Changes changes);
    /// An edit was made of a reading that a project keeps.
    void made(pithward::ReadingId reading, const pithward::EditRecord& record);
    /// New readings of a recorded scan.
    void proposed(int scan, const std::vector<pithward::picture::MeasuredCore>& cores);
    /// For the class itself: comes back when control returns to the event loop.
    void noted();

private:
    BenchScan* at(int id);
    Outcome<bool> change(BenchScan& scan, std::size_t index, const std::function<Outcome<bool>(Document&)>& act);
    void note(Changes changes);

    std::vector<BenchScan> scans_;
    struct TakenBack {
        CorePlace place;
        picture::MeasuredCore core;
        Document document;
    };
    std::vector<TakenBack> taken_back_; ///< Cores that were drawn and taken back, the last one last.
    std::string who_;
    int next_id_ = 1;
    int shown_ = 0;
    int home_ = 0;
    int shown_before_ = 0;
    int core_ = 0;
    bool recorded_only_seen_ = false;
    Changes gathered_;
};

} // namespace pithward::bench

Q_DECLARE_OPERATORS_FOR_FLAGS(pithward::bench::BenchModel::Changes)
