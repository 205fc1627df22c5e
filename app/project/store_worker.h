#pragma once

#include <QObject>
#include <QTimer>
#include <cstdint>
#include <memory>

namespace pithward::record {
class Project;
}

namespace pithward::bench {

/// What lives in the store's thread: the project, and a look now and then whether another window has changed it.
class StoreWorker : public QObject {
    Q_OBJECT

public:
    StoreWorker();
    ~StoreWorker() override;

    /// Null where none is open.
    [[nodiscard]] record::Project* project() const { return project_.get(); }
    /// Takes a project, or none; from then on tells of the changes of others.
    void take(std::unique_ptr<record::Project> project);

signals:
    void changed_by_others();

private:
    void look();

    std::unique_ptr<record::Project> project_;
    QTimer timer_;
    std::int64_t seen_ = 0;
};

} // namespace pithward::bench
