#include "libcore/record/connection.h"

#include "libcore/formats/whole_file.h"
#include "libcore/record/project_header.h"

#include <sys/stat.h>
#include <unistd.h>

#include <QCoreApplication>
#include <QSqlError>
#include <QStorageInfo>
#include <QUuid>
#include <array>
#include <string_view>

namespace pithward::record {

namespace {

constexpr int patience_ms = 5000; ///< For another writer to be done.

// Result codes of SQLite that a person can do something about (sqlite.org, "Result and Error Codes").
constexpr int busy_code = 5;
constexpr int locked_code = 6;
constexpr int read_only_code = 8;
constexpr int io_code = 10;
constexpr int corrupt_code = 11;
constexpr int full_code = 13;
constexpr int cannot_open_code = 14;
constexpr int not_a_database_code = 26;

int argument_count = 1;
char program_name[] = "pithward";
char* program_arguments[] = {program_name, nullptr};

bool on_network(const std::filesystem::path& file) {
    const auto folder = std::filesystem::absolute(file).parent_path();
    const QByteArray type = QStorageInfo(QString::fromStdString(folder.string())).fileSystemType();
    static constexpr std::array<std::string_view, 8> shared{"nfs",   "nfs4", "cifs", "smb3",
                                                            "smbfs", "9p",   "afs",  "fuse.sshfs"};
    return std::ranges::find(shared, std::string_view(type.data(), static_cast<std::size_t>(type.size()))) !=
           shared.end();
}

/// Device and number of a file; 0 where it is not there.
std::pair<std::uint64_t, std::uint64_t> identity_of(const std::filesystem::path& file) {
    struct stat status {};
    return ::stat(file.c_str(), &status) == 0 ? std::pair{std::uint64_t{status.st_dev}, std::uint64_t{status.st_ino}}
                                              : std::pair{std::uint64_t{0}, std::uint64_t{0}};
}

} // namespace

bool may_be_changed(const std::filesystem::path& file) {
    std::error_code error;
    const auto real = std::filesystem::weakly_canonical(file, error); // a log is put beside what a link leads to
    return !error && ::access(real.c_str(), W_OK) == 0 && ::access(real.parent_path().c_str(), W_OK) == 0;
}

Outcome<std::unique_ptr<Connection>> Connection::open(const std::filesystem::path& file, Mode mode, Disk disk) {
    if (mode != Mode::Create) {
        if (auto wrong = fault_of_header(file)) {
            return tl::unexpected(std::move(*wrong));
        }
    }
    std::unique_ptr<Connection> connection(new Connection);
    connection->file_ = file;
    connection->mode_ = mode;
    if (QCoreApplication::instance() == nullptr) {
        connection->application_ = std::make_unique<QCoreApplication>(argument_count, program_arguments);
    }
    connection->name_ = QUuid::createUuid().toString();
    connection->database_ = QSqlDatabase::addDatabase("QSQLITE", connection->name_);
    if (!connection->database_.isValid()) {
        return fail(file.string(), "Qt's driver for SQLite is not installed", "install the package libqt6sql6-sqlite");
    }
    connection->database_.setDatabaseName(QString::fromStdString(file.string()));
    connection->database_.setConnectOptions(
        QString("QSQLITE_BUSY_TIMEOUT=%1%2").arg(patience_ms).arg(mode == Mode::Read ? ";QSQLITE_OPEN_READONLY" : ""));
    if (!connection->database_.open()) {
        return tl::unexpected(connection->fault_of(connection->database_.lastError()));
    }
    // A project from a stranger runs nothing: no functions out of its schema, and checks while its pages are read.
    auto ready = connection->set("trusted_schema", "0");
    for (const char* pragma : {"foreign_keys", "cell_size_check"}) {
        ready = ready ? connection->set(pragma, "1") : ready;
    }
    if (ready && mode != Mode::Read) {
        ready = connection->set_journal(disk);
    } else if (!may_be_changed(file)) {
        connection->remark_ = "the project or its folder can't be written to: it can be looked at, not changed";
    }
    if (!ready) {
        return tl::unexpected(std::move(ready.error()));
    }
    connection->identity_ = identity_of(file);
    return connection;
}

Connection::~Connection() {
    if (mode_ != Mode::Read && database_.isOpen()) {
        fold_in();
    }
    prepared_.clear();
    database_.close();
    database_ = QSqlDatabase();
    QSqlDatabase::removeDatabase(name_);
}

Outcome<QSqlQuery> Connection::run(const char* statement, const QVariantList& values) const {
    QSqlQuery query(database_);
    query.setForwardOnly(true);
    bool done = query.prepare(QString::fromUtf8(statement));
    if (done) {
        for (const QVariant& value : values) {
            query.addBindValue(value);
        }
        done = query.exec();
    }
    if (!done) {
        return tl::unexpected(fault_of(query.lastError()));
    }
    return query;
}

Outcome<void> Connection::change(const char* statement, const QVariantList& values) const {
    return value(statement, values).map([](const QVariant&) {});
}

Outcome<QVariant> Connection::value(const char* statement, const QVariantList& values) const {
    auto known = prepared_.find(std::string_view(statement));
    if (known == prepared_.end()) {
        QSqlQuery query(database_);
        query.setForwardOnly(true);
        if (!query.prepare(QString::fromUtf8(statement))) {
            return tl::unexpected(fault_of(query.lastError()));
        }
        known = prepared_.emplace(statement, std::move(query)).first;
    }
    QSqlQuery& query = known->second;
    for (const QVariant& value : values) {
        query.addBindValue(value);
    }
    if (!query.exec()) {
        Fault fault = fault_of(query.lastError());
        query.finish();
        return tl::unexpected(std::move(fault));
    }
    QVariant first = query.next() ? query.value(0) : QVariant();
    query.finish(); // one that is not would keep a transaction open
    return first;
}

Outcome<int> Connection::version() const {
    return value("PRAGMA user_version").map([](const QVariant& version) { return version.toInt(); });
}

Outcome<void> Connection::set_version(int version) {
    const std::string stamp = "PRAGMA application_id = " + std::to_string(project_application_id);
    const std::string number = "PRAGMA user_version = " + std::to_string(version);
    auto done = run(stamp.c_str());
    done = done ? run(number.c_str()) : std::move(done);
    return done.map([](const QSqlQuery&) {});
}

Outcome<std::int64_t> Connection::changes_by_others() const {
    return value("PRAGMA data_version").map([](const QVariant& version) { return std::int64_t{version.toLongLong()}; });
}

Outcome<void> Connection::still_there() const {
    if (identity_of(file_) != identity_) {
        return fail(file_.string(), "the file was deleted or replaced while it was open; nothing more is written",
                    "put it back, or open it again");
    }
    return {};
}

Outcome<void> Connection::check() const {
    const auto said = value("PRAGMA quick_check(1)");
    if (!said) {
        return tl::unexpected(said.error());
    }
    if (said->toString() != "ok") {
        return fail(file_.string(), "the file is damaged: " + text_from(*said), "use a copy from before");
    }
    return {};
}

Outcome<void> Connection::copy_to(const std::filesystem::path& copy) const {
    std::error_code error;
    if (std::filesystem::exists(std::filesystem::symlink_status(copy, error))) {
        return fail(copy.string(), "the file is there already", "choose another name");
    }
    // SQLite does not sync such a copy, and being killed would leave half of it.
    return make_whole_file(copy, false, [&](const std::filesystem::path& part) {
        return change("VACUUM INTO ?", {QString::fromStdString(part.string())});
    });
}

void Connection::fold_in() {
    // Another window may still be at work: then the last one does it.
    (void)run("PRAGMA journal_mode = DELETE");
}

Outcome<void> Connection::set(const char* pragma, const char* wanted) const {
    const std::string name = std::string("PRAGMA ") + pragma;
    if (auto done = run((name + " = " + wanted).c_str()); !done) {
        return tl::unexpected(std::move(done.error()));
    }
    const auto answer = value(name.c_str());
    if (!answer) {
        return tl::unexpected(answer.error());
    }
    if (text_from(*answer) != wanted) {
        return fail(file_.string(), name + " stays " + text_from(*answer), "use SQLite 3.31 or later");
    }
    return {};
}

Outcome<void> Connection::set_journal(Disk disk) {
    static constexpr const char* full = "2";
    static constexpr const char* extra = "3";
    if (disk == Disk::Network || on_network(file_)) {
        // Memory that is shared by processes does not reach across a network, which the log needs.
        remark_ = "the project is on a network folder: one window at a time can work on it";
        auto ready = run("PRAGMA locking_mode = EXCLUSIVE");
        ready = ready ? run("PRAGMA journal_mode = DELETE") : std::move(ready);
        return ready ? set("synchronous", extra) : tl::unexpected(ready.error());
    }
    const auto mode = value("PRAGMA journal_mode = WAL");
    if (!mode) {
        return tl::unexpected(mode.error());
    }
    if (mode->toString() != "wal") {
        remark_ = "the disk does not let the project keep a log: one window at a time can write to it";
        return set("synchronous", extra);
    }
    return set("synchronous", full);
}

Fault Connection::fault_of(const QSqlError& error) const {
    const std::string file = file_.string();
    switch (error.nativeErrorCode().toInt() & 0xFF) {
    case busy_code:
    case locked_code:
        return {file, "another program is writing to this project", "wait until it is done and try again"};
    case read_only_code:
        return {file, "the project or its folder can't be written to", "ask for permission, or copy it elsewhere"};
    case io_code:
        return {file, "the disk does not answer as it should", "check the disk and the network, and try again"};
    case corrupt_code:
        return {file, "the file is damaged", "use a copy from before"};
    case full_code:
        return {file, "the disk is full; nothing of this change was written", "make room and try again"};
    case cannot_open_code:
        return {file, "the file can't be opened", "check that its folder is there and can be written to"};
    case not_a_database_code:
        return no_project(file_);
    default:
        return {file, "the project's data base says: " + error.text().toStdString(),
                "use a copy from before; please report it when that says the same"};
    }
}

} // namespace pithward::record
