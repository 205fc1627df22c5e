#pragma once

#include <QObject>
#include <QThreadPool>
#include <filesystem>
#include <set>
#include <stop_token>
#include <string>

namespace pithward::record {
struct ScanEntry;
} // namespace pithward::record

namespace pithward::bench {

/// Computes the checksums of a project's scans beside the window, one after the other, so that neither the window nor
/// the project's file waits for them. One that is not done when the project is closed is computed the next time.
class Checksums : public QObject {
    Q_OBJECT

public:
    Checksums();
    /// Stops what runs; waits for that, a few milliseconds.
    ~Checksums() override;

    /// Asks for the checksum of a scan, by its path in the project's folder. One that was asked for before is not
    /// computed again, and one that leads out of the folder is not opened.
    void compute(const std::filesystem::path& folder, const std::string& path);

signals:
    /// The size and checksum of a scan. Nothing comes for one that can't be read: who measures it is told why.
    void computed(const record::ScanEntry& entry);

private:
    QThreadPool pool_;
    std::stop_source stop_;
    std::set<std::string> asked_;
};

} // namespace pithward::bench
