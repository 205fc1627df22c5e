#include "app/project/store.h"

#include "app/project/store_worker.h"
#include "libcore/record/project.h"

#include <QThread>

namespace pithward::bench {

Store::Store(QObject* parent)
    : QObject(parent)
    , thread_(std::make_unique<QThread>())
    , worker_(new StoreWorker) {
    worker_->moveToThread(thread_.get());
    connect(thread_.get(), &QThread::finished, worker_, &QObject::deleteLater);
    connect(worker_, &StoreWorker::changed_by_others, this, &Store::changed_by_others);
    thread_->setObjectName("store");
    thread_->start();
}

Store::~Store() {
    // Behind everything that was asked: then the thread closes the file and ends.
    QMetaObject::invokeMethod(worker_, [worker = worker_] {
        worker->take(nullptr);
        QThread::currentThread()->quit();
    });
    thread_->wait();
}

void Store::open(const std::filesystem::path& file, std::function<void(Outcome<void>)> done) {
    post([file, done = std::move(done), worker = worker_](record::Project* /*before*/) -> Answer {
        auto opened = record::Project::open(file, record::Project::Access::AsAllowed);
        auto answer = std::make_shared<Outcome<void>>();
        if (!opened) {
            *answer = tl::unexpected(std::move(opened.error()));
        }
        worker->take(opened ? std::make_unique<record::Project>(std::move(*opened)) : nullptr);
        return [answer, done] { done(std::move(*answer)); };
    });
}

void Store::post(Task task) {
    ++waiting_;
    QMetaObject::invokeMethod(worker_, [this, worker = worker_, task = std::move(task)] {
        Answer answer = task(worker->project());
        QMetaObject::invokeMethod(
            this,
            [this, answer = std::move(answer)] {
                --waiting_;
                answer();
                emit waiting_changed(waiting_);
            },
            Qt::QueuedConnection);
    });
    emit waiting_changed(waiting_);
}

Fault Store::not_open() {
    return {"", "the project is not open", "open it again"};
}

} // namespace pithward::bench
