#pragma once

#include "app/project/project_desk.h"
#include "app/site/site_cores.h"

#include <QObject>
#include <QThreadPool>
#include <memory>
#include <stop_token>

namespace pithward::bench {

struct SiteDating;

/// Dates the site of the open project beside the window. What is asked anew stops what runs, and only the last result
/// is told.
class SiteWork : public QObject {
    Q_OBJECT

public:
    explicit SiteWork(ProjectDesk& desk, QObject* parent = nullptr);
    ~SiteWork() override;

    /// Looks at the project's readings, and dates them when they are others than those that were dated last.
    void refresh();
    /// Looks at the project's readings and does no more: `seen` tells.
    void look();
    /// Stops what runs; nothing of it is kept.
    void cancel();
    [[nodiscard]] bool busy() const { return busy_; }
    /// Whether the readings, as they were last seen, are dated or known to be too few.
    [[nodiscard]] bool known() const { return known_; }
    /// Null where too few series are dated, or nothing was dated yet.
    [[nodiscard]] const std::shared_ptr<const SiteDating>& dating() const { return dating_; }
    /// What was found in the project, also where it is too little.
    [[nodiscard]] const SiteCores& cores() const { return cores_; }

signals:
    /// Work began or ended, or there is another result.
    void changed();
    void told(const QString& message);
    /// The project's readings, as they are now.
    void seen(const SiteCores& cores);

private:
    void forget();
    void ask(void (SiteWork::*then)(SiteCores));
    void take(SiteCores cores);
    void start(SiteCores cores);

    ProjectDesk& desk_;
    std::shared_ptr<SiteShelf> shelf_ = std::make_shared<SiteShelf>(); ///< Used in the store's thread alone.
    std::shared_ptr<const SiteDating> dating_;
    SiteCores cores_;
    bool known_ = false; ///< Whether `dating_` is what `cores_` give.
    bool busy_ = false;
    quint64 asked_ = 0; ///< Goes up when another project is open: answers of the one before are no longer wanted.
    quint64 number_ = 0;
    std::stop_source stop_;
    QThreadPool pool_;
};

} // namespace pithward::bench
