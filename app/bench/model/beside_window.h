#pragma once

#include <QFutureWatcher>
#include <QObject>
#include <QThreadPool>
#include <QtConcurrentRun>
#include <type_traits>
#include <utility>

namespace pithward::bench {

/// Runs `work` in a thread of the pool and hands its result to `done`, once, in the thread of `owner`; never when the
/// owner is gone by then. (A continuation added by QFuture::then of Qt 6.4 can run twice when the work ends in the same
/// moment.)
template <typename Work, typename Done>
void beside_window(QThreadPool& pool, QObject* owner, Work work, Done done) {
    using Watcher = QFutureWatcher<std::invoke_result_t<Work&>>;
    auto* watcher = new Watcher(owner);
    QObject::connect(watcher, &Watcher::finished, owner, [watcher, done = std::move(done)]() mutable {
        watcher->deleteLater();
        done(watcher->future().takeResult());
    });
    watcher->setFuture(QtConcurrent::run(&pool, std::move(work)));
}

} // namespace pithward::bench
