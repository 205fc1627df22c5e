#pragma once

#include "app/bench/control/core_reader.h"
#include "app/bench/control/scan_jobs.h"
#include "app/bench/exporting/exports.h"
#include "app/bench/model/bench_model.h"

#include <QObject>
#include <QStringList>
#include <vector>

namespace pithward::bench {

/// What a person can do on the bench, without a window: each wish becomes work beside the window, and its result goes
/// into the model when that is still what it was.
class BenchControl : public QObject {
    Q_OBJECT

public:
    explicit BenchControl(ScanOpener opener, QObject* parent = nullptr);

    [[nodiscard]] BenchModel& model() { return model_; }
    [[nodiscard]] const BenchModel& model() const { return model_; }
    [[nodiscard]] ScanJobs& jobs() { return jobs_; }
    [[nodiscard]] const ScanJobs& jobs() const { return jobs_; }

    /// Opens a project where there is one among the paths. Else opens scans, and every scan in the folders among them,
    /// and shows the first. What can't be opened is told, and the bench stays as it is; what turns out to be damaged
    /// when it is read is told and taken off again.
    void open(const QStringList& paths);
    void show_scan(int id);
    void step_scan(int by);
    void step_core(int by);
    void show_core(const CorePlace& place);
    /// What a scan that is opened from a file is called; where it says nothing, by its file name.
    void name_scans_by(std::function<std::string(const std::string& path)> naming) { naming_ = std::move(naming); }
    void use_dpi(double dpi);

    void read_shown_scan();
    void read_drawn_path(std::vector<ImagePoint> from_bark);
    void swap_ends();
    void set_wood(WoodType wood);
    void set_outer(OuterWood outer);
    void set_last_year(std::optional<Year> year);
    /// Writes all readings of the shown scan to a file.
    void export_shown(const QString& path, const ExportFormat& format);

signals:
    /// A project was to be opened.
    void project_wanted(const QString& file);
    /// Something a person should know; plain words with what to do.
    void told(const QString& message);
    /// Something went as it should.
    void done(const QString& message);

private:
    void read_if_new();
    void reread_present(const std::function<void(ReadingRequest&)>& change);
    void reread(const BenchScan& home, std::size_t index, const std::function<void(ReadingRequest&)>& change);
    void tell(const Fault& fault);

    ScanOpener opener_;
    std::function<std::string(const std::string& path)> naming_;
    BenchModel model_;
    ScanJobs jobs_;
};

} // namespace pithward::bench
