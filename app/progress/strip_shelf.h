#pragma once

#include "app/project/project_desk.h"
#include "app/site/site_cores.h"

#include <QImage>
#include <QObject>
#include <QSize>
#include <QThreadPool>
#include <deque>
#include <map>
#include <memory>
#include <set>
#include <stop_token>
#include <string>

namespace pithward::bench {

/// Small pictures of cores, made beside the window when they are asked for: what was asked for last comes first, what
/// has waited too long is forgotten, and only so many are kept.
class StripShelf : public QObject {
    Q_OBJECT

public:
    explicit StripShelf(const ProjectDesk& desk, QObject* parent = nullptr);
    ~StripShelf() override;

    /// The picture of a core, by its reading where it has one, at most as large as `size` in pixels. Null while it is
    /// not made yet, `come` tells then, and where it can't be made.
    [[nodiscard]] QImage strip(const record::CoreEntry& core, const std::shared_ptr<const SiteCore>& read, QSize size);
    /// Stops what runs and drops what waits.
    void stop();

signals:
    void come(pithward::record::CoreId core);

private:
    struct Wanted {
        record::CoreEntry core;
        std::shared_ptr<const SiteCore> read; ///< Null where the core has no reading.
        QSize size;
    };
    struct Made {
        QImage picture; ///< Null where it can't be made.
        std::int64_t revision = 0;
        QSize size;
        quint64 asked = 0; ///< When it was last asked for.
    };
    /// The last scan that was read: several cores may lie on it.
    struct LastScan {
        std::string name;
        int reduction = 1;
        QImage picture;
    };

    void forget();
    void start_next();
    void keep(record::CoreId core, Made made);

    const ProjectDesk& desk_;
    std::map<record::CoreId, Made> made_;
    std::deque<Wanted> wanted_;
    std::shared_ptr<LastScan> last_ = std::make_shared<LastScan>(); ///< Used in the pool's one thread alone.
    std::optional<record::CoreId> running_;
    quint64 clock_ = 0;
    quint64 generation_ = 0;
    std::stop_source stop_;
    QThreadPool pool_;
};

} // namespace pithward::bench
