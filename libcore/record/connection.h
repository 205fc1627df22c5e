#pragma once

#include "libcore/record/project_values.h"
#include "libcore/record/sql_values.h"
#include "libcore/specimen/outcome.h"

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QVariant>
#include <filesystem>
#include <functional>
#include <map>
#include <memory>
#include <string>
#include <utility>

class QCoreApplication;

namespace pithward::record {

/// One connection to a project's file. What only SQLite knows is in connection.cpp and nowhere else; the rest of
/// libcore/record speaks plain SQL. A connection is used on the thread that made it.
class Connection {
public:
    enum class Mode { Read, Write, Create };

    /// Opens a file that is there, or with Mode::Create makes a new one. Settings are read back: what the system does
    /// not grant is a fault, except the log of a local disk, for which a rollback journal stands in (see `remark`).
    [[nodiscard]] static Outcome<std::unique_ptr<Connection>> open(const std::filesystem::path& file, Mode mode,
                                                                   Disk disk = Disk::AsFound);
    ~Connection();
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    /// Runs one statement with its values in place of the question marks; its rows are the answer.
    [[nodiscard]] Outcome<QSqlQuery> run(const char* statement, const QVariantList& values = {}) const;
    /// The same for a statement without an answer. It stays prepared: most of a short statement's time goes into
    /// reading it.
    [[nodiscard]] Outcome<void> change(const char* statement, const QVariantList& values = {}) const;
    /// The first value of the first row; a null one where there is no row. It stays prepared, too.
    [[nodiscard]] Outcome<QVariant> value(const char* statement, const QVariantList& values = {}) const;

    [[nodiscard]] const std::filesystem::path& file() const { return file_; }
    /// What a person should know of the way the file is kept, such as on a network folder; mostly empty.
    [[nodiscard]] const std::string& remark() const { return remark_; }

    /// Whether it was opened for writing.
    [[nodiscard]] bool writes() const { return mode_ != Mode::Read; }

    [[nodiscard]] Outcome<int> version() const;
    /// Within a transaction, like any other change.
    [[nodiscard]] Outcome<void> set_version(int version);
    /// A number that grows when another connection has changed the file.
    [[nodiscard]] Outcome<std::int64_t> changes_by_others() const;
    /// Fails when the file is no longer the one that was opened: SQLite would go on writing to what nobody can find
    /// again.
    [[nodiscard]] Outcome<void> still_there() const;
    /// Reads the whole file; the first thing that is wrong with it.
    [[nodiscard]] Outcome<void> check() const;
    /// Copies the project as it is into a new file, open windows or not: whole and on the disk, or not there. Being
    /// killed leaves a file that ends in .part.
    [[nodiscard]] Outcome<void> copy_to(const std::filesystem::path& copy) const;
    /// Makes one file of it again. A connection that is the last does this when it goes.
    void fold_in();

    /// The fault of a statement that failed, in words for a person.
    [[nodiscard]] Fault fault_of(const class QSqlError& error) const;

private:
    Connection() = default;
    [[nodiscard]] Outcome<void> set(const char* pragma, const char* wanted) const;
    [[nodiscard]] Outcome<void> set_journal(Disk disk);

    std::filesystem::path file_;
    std::pair<std::uint64_t, std::uint64_t> identity_; ///< Of the file on the disk; 0 on a system that has none.
    std::unique_ptr<QCoreApplication> application_;    ///< Qt's drivers want one; null where the program has its own.
    QString name_;
    QSqlDatabase database_;
    mutable std::map<std::string, QSqlQuery, std::less<>> prepared_; ///< By their text; none is at work.
    Mode mode_ = Mode::Read;
    std::string remark_;
};

/// Whether a file and its folder can be written to; SQLite wants both.
[[nodiscard]] bool may_be_changed(const std::filesystem::path& file);

} // namespace pithward::record
