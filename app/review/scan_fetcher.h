#pragma once

#include "app/project/project_desk.h"

#include <QObject>
#include <QThreadPool>
#include <functional>
#include <map>
#include <memory>
#include <string>

namespace pithward::bench {

/// Opens scans of the project to look at, beside the window, and keeps the last few.
class ScanFetcher : public QObject {
    Q_OBJECT

public:
    explicit ScanFetcher(const ProjectDesk& desk, QObject* parent = nullptr);
    ~ScanFetcher() override;

    using Opened = Outcome<std::shared_ptr<const OpenedScan>>;
    /// Hands the scan of a core to `done`. What is asked later replaces what is asked now: only the last is answered.
    void fetch(const record::CoreEntry& core, std::function<void(const Opened&)> done);

private:
    const ProjectDesk& desk_;
    std::map<std::string, std::shared_ptr<const OpenedScan>> kept_; ///< By the project's name for it.
    quint64 asked_ = 0;
    QThreadPool pool_;
};

} // namespace pithward::bench
