#pragma once

#include <QObject>
#include <QProcess>
#include <QString>
#include <QStringList>
#include <functional>

namespace pithward::bench {

/// A command of the program itself that runs beside the window, in a process of its own: what the window and the
/// command line do is the same. One at a time.
class Errand : public QObject {
    Q_OBJECT

public:
    explicit Errand(QObject* parent = nullptr);
    /// Ends what runs.
    ~Errand() override;

    /// Another program file to run than that of this process.
    void use_program(const QString& file) { program_ = file; }

    /// Runs a command with its arguments. `title` says what is done; `steps`: how many lines of progress it gives, 0
    /// where that is not known. `done` comes when it has ended well. False where another one is under way.
    bool run(const QString& title, const QStringList& arguments, int steps, std::function<void()> done);
    void cancel();
    [[nodiscard]] bool busy() const { return process_.state() != QProcess::NotRunning; }

signals:
    void started(const QString& title);
    void progressed(double done);
    void finished();
    /// What the command says to a person, such as a core that has no scan.
    void told(const QString& message);
    /// What an archive package lacks: "needed: WHAT; REMEDY".
    void lacks(const QString& what);

private:
    void read_lines();
    void end(int status, QProcess::ExitStatus how);

    QString program_;
    QProcess process_;
    std::function<void()> done_;
    int steps_ = 0;
    int lines_ = 0;
    bool cancelled_ = false;
};

} // namespace pithward::bench
