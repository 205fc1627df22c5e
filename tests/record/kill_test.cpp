#include "libcore/edit/apply.h"
#include "libcore/edit/edit_json.h"
#include "libcore/record/project_header.h"
#include "tests/record/made_up_project.h"
#include "tests/record/slow_version.h"
#include "tests/support/temporary_folder.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <QSqlDatabase>
#include <QSqlQuery>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <optional>
#include <random>

namespace pithward::record {
namespace {

/// Runs the editor, kills it a while after it is ready, or after it was started, and answers with the records that it
/// told of.
std::vector<EditRecord> killed_editor(const std::string& project, unsigned seed, const std::string& told, int ms,
                                      bool when_ready) {
    std::filesystem::remove(told);
    const std::string number = std::to_string(seed);
    const pid_t child = ::fork();
    if (child == 0) {
        const int out = ::open(told.c_str(), O_CREAT | O_WRONLY | O_TRUNC, 0600);
        ::dup2(out, STDOUT_FILENO);
        ::execl(RECORD_EDITOR, RECORD_EDITOR, project.c_str(), number.c_str(), nullptr);
        ::_exit(127);
    }
    std::error_code error;
    const auto silent = [&] {
        return !std::filesystem::exists(told, error) || std::filesystem::file_size(told, error) == 0;
    };
    for (int waited = 0; when_ready && silent() && waited < 30'000; ++waited) {
        ::usleep(1000);
    }
    ::usleep(static_cast<useconds_t>(ms) * 1000U);
    EXPECT_EQ(::kill(child, SIGKILL), 0);
    int status = 0;
    ::waitpid(child, &status, 0);
    EXPECT_TRUE(WIFSIGNALED(status)) << "the editor ended by itself";
    std::vector<EditRecord> records;
    std::ifstream in(told);
    std::string ready;
    std::getline(in, ready);
    for (std::string line; std::getline(in, line) && !in.eof();) { // a last line may be cut
        records.push_back(record_from_json(line).value());
    }
    return records;
}

int wanted_kills() {
    const char* text = std::getenv("PITHWARD_KILLS");
    return text == nullptr ? 20 : std::atoi(text);
}

TEST(KillTrial, WhatWasToldIsThereAndNothingIsHalfThere) {
    const test::TemporaryFolder folder;
    const std::string file = folder.file("a.pithward");
    { const Project project = test::made_up_project(file); }
    const Reading first = test::opened(file, Project::Access::Read).reading(ReadingId{1}).value();
    std::random_device device;
    const unsigned seed = device();
    std::mt19937 random(seed);
    std::size_t told = 0;
    for (int n = 0; n < wanted_kills(); ++n) {
        const int ms = 2 + static_cast<int>(random() % 98);
        const auto records = killed_editor(file, seed + static_cast<unsigned>(n), folder.file("told"), ms, n % 5 != 0);
        const Project project = test::opened(file);
        ASSERT_TRUE(project.check().has_value());
        const auto document = project.document(ReadingId{1});
        ASSERT_TRUE(document.has_value()) << document.error().line() << ", seed " << seed << ", kill " << n;
        const auto& log = document->log();
        for (const EditRecord& record : records) {
            ASSERT_LE(record.id.value, document->revision()) << "an edit is lost; seed " << seed << ", kill " << n;
            ASSERT_EQ(log[static_cast<std::size_t>(record.id.value) - 1], record);
        }
        // The tables are what the history makes of the first reading: no edit is half there.
        ASSERT_EQ(reading_at(*document, EditId{0}).value(), first) << "seed " << seed << ", kill " << n;
        ASSERT_EQ(log.size(), static_cast<std::size_t>(document->revision()));
        told += records.size();
    }
    EXPECT_GT(told, 0U) << "the editor was always killed before it could edit";
    std::printf("%d kills, %zu edits told\n", wanted_kills(), told);
    RecordProperty("seed", std::to_string(seed));
    RecordProperty("edits", std::to_string(told));
}

void migrate_and_kill(const std::string& project, int ms) {
    const pid_t child = ::fork();
    if (child == 0) {
        ::execl(RECORD_MIGRATOR, RECORD_MIGRATOR, project.c_str(), nullptr);
        ::_exit(127);
    }
    ::usleep(static_cast<useconds_t>(ms) * 1000U);
    (void)::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
}

/// A file as SQLite alone sees it: a finished migration is one that this program refuses, since it is newer.
class AsSqliteSeesIt {
public:
    explicit AsSqliteSeesIt(const std::string& file)
        : database_(QSqlDatabase::addDatabase("QSQLITE", "as SQLite sees it")) {
        database_.setDatabaseName(QString::fromStdString(file));
        EXPECT_TRUE(database_.open());
    }
    ~AsSqliteSeesIt() {
        database_.close();
        database_ = QSqlDatabase();
        QSqlDatabase::removeDatabase("as SQLite sees it");
    }
    AsSqliteSeesIt(const AsSqliteSeesIt&) = delete;
    AsSqliteSeesIt& operator=(const AsSqliteSeesIt&) = delete;

    /// Nothing where the statement can't be run.
    [[nodiscard]] std::optional<QString> value(const char* statement) const {
        QSqlQuery query(database_);
        return query.exec(statement) && query.next() ? std::optional(query.value(0).toString()) : std::nullopt;
    }

private:
    QSqlDatabase database_;
};

TEST(KillTrial, AMigrationIsThereOrNot) {
    const test::TemporaryFolder folder;
    const std::string whole = folder.file("whole.pithward");
    {
        Project project = test::made_up_project(whole);
        ASSERT_TRUE(project.put_person({"Sue", "supervisor"}, test::stamp_by("Ida")).has_value());
    }
    const Project reader = test::opened(whole, Project::Access::Read); // Qt's application lives as long
    std::random_device device;
    const unsigned seed = device();
    std::mt19937 random(seed);
    int migrated = 0;
    int copied = 0;
    for (int n = 0; n < wanted_kills(); ++n) {
        SCOPED_TRACE("seed " + std::to_string(seed) + ", kill " + std::to_string(n));
        const test::TemporaryFolder each;
        const std::string file = each.file("a.pithward");
        std::filesystem::copy_file(whole, file);
        migrate_and_kill(file, 5 + static_cast<int>(random() % 1500));
        const bool copied_whole = std::filesystem::exists(file + ".version-1");
        bool done = false;
        {
            const AsSqliteSeesIt seen(file);
            EXPECT_EQ(seen.value("PRAGMA integrity_check"), "ok");
            EXPECT_EQ(seen.value("SELECT COUNT(*) FROM reading"), "3");
            done = seen.value("PRAGMA user_version") != QString::number(project_version);
            EXPECT_EQ(seen.value("PRAGMA user_version"), QString::number(project_version + (done ? 1 : 0)));
            EXPECT_EQ(seen.value("SELECT COUNT(*) FROM slow"),
                      done ? std::optional(QString::number(test::slow_rows)) : std::nullopt);
            EXPECT_EQ(seen.value("SELECT initials FROM person"), done ? std::optional<QString>("S") : std::nullopt);
        }
        // What stands is a project that opens: the old file where the step was not done, and the copy where there is
        // one.
        EXPECT_TRUE(copied_whole || !done);
        std::vector<std::string> before_it;
        if (!done) {
            before_it.push_back(file);
        }
        if (copied_whole) {
            before_it.push_back(file + ".version-1");
        }
        for (const std::string& one : before_it) {
            const Project before = test::opened(one);
            EXPECT_TRUE(before.check().has_value());
            EXPECT_EQ(before.readings()->size(), 3U);
        }
        migrated += done ? 1 : 0;
        copied += copied_whole ? 1 : 0;
    }
    std::printf("%d kills, seed %u: %d after the copy was made, %d after the step was done\n", wanted_kills(), seed,
                copied, migrated);
}

} // namespace
} // namespace pithward::record
