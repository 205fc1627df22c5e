#pragma once

#include "app/bench/control/bench_control.h"
#include "app/project/checksums.h"
#include "app/project/overview.h"
#include "app/project/project_scan.h"
#include "app/project/store.h"
#include "libcore/pith/growth.h"

#include <QObject>
#include <QTimer>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <set>

namespace pithward::bench {

/// A project at work: ties its store to the bench. What is changed on the bench is written at once, beside the window;
/// what the project refuses is taken back and told; what another window changes is shown.
class ProjectDesk : public QObject {
    Q_OBJECT

public:
    ProjectDesk(BenchControl& control, ScanOpener opener, QObject* parent = nullptr);
    ~ProjectDesk() override;

    /// Opens a project in place of the one that is open. One that can't be opened is told, and all stays as it is.
    void open(const QString& file);
    [[nodiscard]] bool is_open() const { return store_ != nullptr; }
    [[nodiscard]] const ProjectOverview& overview() const { return overview_; }
    /// How much is not yet answered by the store: 0 when all that is shown is on the disk.
    [[nodiscard]] int waiting() const { return store_ ? store_->waiting() : 0; }
    /// The project's file in its thread. Only while one is open.
    [[nodiscard]] Store& store() { return *store_; }
    [[nodiscard]] const ScanOpener& opener() const { return opener_; }
    [[nodiscard]] EditStamp stamp() const { return model_.stamp(); }

    /// Files outside of the project's folder that its person has allowed to be read, while the window is open.
    [[nodiscard]] const std::vector<std::filesystem::path>& allowed() const { return allowed_; }
    /// Allows one more, by its real place, for this and any other project of this window.
    void allow(const std::filesystem::path& place) { allowed_.push_back(place); }

    /// Says who works here, and enters them in the project.
    void set_person(const record::Person& person);

    /// Brings a core with its readings to the bench, or shows it where it is there.
    void open_core(record::CoreId id);
    /// The same for the core of a reading, and shows that one.
    void open_reading(ReadingId id);
    /// The next core of the project, 1, or the one before, -1.
    void step_core(int by);
    /// The core that is shown on the bench.
    [[nodiscard]] std::optional<record::CoreId> present() const;

    /// Changes the field data of a core, of its tree and its site. `label` tells of it in the history.
    void change_details(const record::CoreEntry& before, const record::CoreEntry& after, const QString& label,
                        std::function<void(bool)> done);

    /// Whether a reading of the project can go on on this scan: its file lies in the project's folder or below.
    [[nodiscard]] bool can_hold(const BenchScan& scan) const;
    /// Notes a scan that a reading goes on on. Its checksum follows.
    void note_scan(const BenchScan& scan);

    /// Lets a reading stand for its core.
    void accept(ReadingId reading);

    using Building = std::function<Outcome<Edit>(const Document&)>;
    /// Makes an edit of a reading that need not be on the bench. What can't be done is told. `done` comes in each case.
    void make(ReadingId reading, Building build, std::function<void(bool)> done = {});

signals:
    /// Another project is open.
    void opened();
    void overview_changed();
    void waiting_changed(int waiting);
    /// The scan of a core leads outside of the project's folder, and is not opened: somebody is to be asked.
    void leads_outside(record::CoreId core, const PlaceOutside& outside);
    /// An edit was not written, and is taken back.
    void refused();
    void told(const QString& message);

private:
    struct Wanted {
        record::CoreId core;
        std::optional<ReadingId> reading;
    };
    /// What the project keeps of a core that is to be opened.
    struct KeptCore {
        std::vector<Document> documents; ///< Of all readings on its scan.
        std::optional<pith::GrowthBeforehand> growth;
    };
    void give_up_opening(const Fault& fault);
    void take(std::unique_ptr<Store> store, ProjectOverview overview);
    void read_overview_soon();
    void read_overview_now();
    void follow_overview(Outcome<ProjectOverview> overview);
    void write(ReadingId reading, const EditRecord& record);
    void answered(ReadingId reading, const EditRecord& record, const Outcome<std::optional<EditRecord>>& answer);
    void reload(ReadingId reading);
    void fetch(const record::CoreEntry& core, KeptCore kept);
    void put_on_bench(const record::CoreEntry& core, OpenedScan scan, std::vector<Document> documents);
    void show_wanted();
    /// Brings the other scans that the readings on this one go on on.
    void fetch_further(int scan);
    void put_scan(const record::ScanEntry& entry);
    /// Has the checksums computed that the project lacks.
    void sum_up_scans();
    /// What the project calls a file; empty where it lies outside its folder.
    [[nodiscard]] std::string name_in_project(const std::string& path) const;
    void keep_proposed(int scan, const std::vector<picture::MeasuredCore>& cores);
    /// The scan on the bench that a reading belongs to; null where it is not there.
    [[nodiscard]] const BenchScan* scan_of(ReadingId reading) const;
    [[nodiscard]] const record::CoreEntry* core_on(const std::string& scan) const;
    void tell(const Fault& fault);

    BenchControl& control_;
    BenchModel& model_;
    ScanOpener opener_;
    std::unique_ptr<Store> store_;
    std::unique_ptr<Store> opening_;
    std::unique_ptr<Checksums> checksums_; ///< Of the project that is open.
    ProjectOverview overview_;
    std::vector<std::filesystem::path> allowed_;
    QTimer soon_;
    bool overview_asked_ = false;
    Wanted wanted_;
    std::map<ReadingId, int> pending_; ///< Edits of the bench that the store has not answered.
    std::set<ReadingId> changed_;      ///< Readings whose trees are to be looked at again.
    std::set<ReadingId> stale_;        ///< Readings of the bench to be taken from the file when nothing is pending.
};

} // namespace pithward::bench
