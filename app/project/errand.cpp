#include "app/project/errand.h"

#include <QCoreApplication>
#include <algorithm>
#include <utility>

namespace pithward::bench {

namespace {

constexpr int patience_ms = 3000; ///< For a command that was told to end.

} // namespace

Errand::Errand(QObject* parent)
    : QObject(parent)
    , program_(QCoreApplication::applicationFilePath()) {
    process_.setStandardOutputFile(QProcess::nullDevice());
    process_.setStandardInputFile(QProcess::nullDevice());
    connect(&process_, &QProcess::readyReadStandardError, this, &Errand::read_lines);
    connect(&process_, &QProcess::finished, this, &Errand::end);
    connect(&process_, &QProcess::errorOccurred, this, [this](QProcess::ProcessError error) {
        if (error == QProcess::FailedToStart) {
            emit told(tr("%1 can't be started; install Pithward again.").arg(program_));
            emit finished();
        }
    });
}

Errand::~Errand() {
    process_.disconnect(this);
    if (busy()) {
        process_.terminate();
        if (!process_.waitForFinished(patience_ms)) {
            process_.kill();
            process_.waitForFinished(patience_ms);
        }
    }
}

bool Errand::run(const QString& title, const QStringList& arguments, int steps, std::function<void()> done) {
    if (busy()) {
        return false;
    }
    done_ = std::move(done);
    steps_ = steps;
    lines_ = 0;
    cancelled_ = false;
    emit started(title);
    process_.start(program_, arguments);
    return true;
}

void Errand::cancel() {
    if (busy()) {
        cancelled_ = true;
        process_.terminate(); // its files are whole or not there, however it ends
    }
}

void Errand::read_lines() {
    process_.setReadChannel(QProcess::StandardError);
    while (process_.canReadLine()) {
        const QString line = QString::fromUtf8(process_.readLine()).trimmed();
        static const QString from_program = "pithward: ";
        static const QString missing = "missing, "; // as an archive package lacks something
        if (line.startsWith(missing)) {
            emit lacks(line.mid(missing.size()));
        } else if (line.startsWith(from_program)) {
            emit told(line.mid(from_program.size()));
        } else if (steps_ > 0) {
            emit progressed(std::min(1.0, static_cast<double>(++lines_) / steps_));
        }
    }
}

void Errand::end(int status, QProcess::ExitStatus how) {
    read_lines();
    if (how == QProcess::CrashExit && !cancelled_) {
        emit told(tr("The work beside the window ended before it was done; please report this."));
    }
    const auto done = std::exchange(done_, nullptr);
    emit finished();
    if (how == QProcess::NormalExit && status == 0 && done) {
        done();
    }
}

} // namespace pithward::bench
