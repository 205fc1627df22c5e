#pragma once

#include "libcore/specimen/outcome.h"

#include <QObject>
#include <filesystem>
#include <functional>
#include <memory>
#include <utility>

class QThread;

namespace pithward::record {
class Project;
}

namespace pithward::bench {

class StoreWorker;

/// A project's file, open in one thread of its own by one connection. What is asked is done there, one after the other;
/// each answer comes back on the thread of this object. The window never waits for the disk.
class Store : public QObject {
    Q_OBJECT

public:
    explicit Store(QObject* parent = nullptr);
    /// Waits until all that was asked is done, and closes the file. Answers that are still on their way are dropped.
    ~Store() override;

    /// Opens a file for work, or to be looked at where it can't be written to. All that is asked later waits for that,
    /// and fails when it failed.
    void open(const std::filesystem::path& file, std::function<void(Outcome<void>)> done);

    template <typename T>
    using Act = std::function<Outcome<T>(record::Project&)>;

    /// Runs `act` on the project and hands its answer to `done`.
    template <typename T>
    void ask(Act<T> act, std::function<void(Outcome<T>)> done) {
        post([act = std::move(act), done = std::move(done)](record::Project* project) {
            auto answer = std::make_shared<Outcome<T>>(project != nullptr ? act(*project) : tl::unexpected(not_open()));
            return [answer, done] { done(std::move(*answer)); };
        });
    }

    /// How much has been asked and not been answered.
    [[nodiscard]] int waiting() const { return waiting_; }

signals:
    void waiting_changed(int waiting);
    /// Another window has changed the project; comes within a second.
    void changed_by_others();

private:
    using Answer = std::function<void()>;
    using Task = std::function<Answer(record::Project* project)>; ///< Null where none is open.

    void post(Task task);
    [[nodiscard]] static Fault not_open();

    std::unique_ptr<QThread> thread_;
    StoreWorker* worker_;
    int waiting_ = 0;
};

} // namespace pithward::bench
