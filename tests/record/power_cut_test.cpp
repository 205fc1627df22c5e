// What a project holds after the power went, at any moment of a session and with any part of what was not synced.
#include "libcore/edit/reading_edits.h"
#include "tests/edit/random_edits.h"
#include "tests/record/made_up_project.h"
#include "tests/record/power_cut.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>

namespace pithward::record {
namespace {

using test::DiskEvent;
using test::stamp_by;
using test::Unsynced;

/// What was told as done once so many events had happened.
struct Told {
    std::size_t events = 0;
    std::size_t edits = 0; ///< Of the first reading.
    std::size_t people = 0;
    std::size_t readings = 0;
};

struct Session {
    test::Files before;
    std::vector<DiskEvent> events;
    std::vector<Told> told;
    std::vector<Reading> states; ///< The first reading after so many edits.
    std::vector<EditRecord> log;
};

enum class Keeping { Log, NoLog, Network };

/// Edits of the first reading, people, and a reading more, in two runs of the program. What the first run writes is
/// more than the log may hold before it is put into the file and begun anew.
Session recorded_session(const std::string& file, Keeping keeping, unsigned seed) {
    { const Project project = test::made_up_project(file); }
    Session session;
    session.before[""] = test::bytes_of(file);
    std::mt19937 random(seed);
    const ReadingId id{1};
    const test::RecordingDisk disk(file, keeping != Keeping::NoLog);
    const auto disk_kind = keeping == Keeping::Network ? Disk::Network : Disk::AsFound;
    for (int run = 0; run < 2; ++run) {
        auto opened = Project::open(file, Project::Access::Write, disk_kind);
        EXPECT_TRUE(opened.has_value()) << (opened ? "" : opened.error().line());
        Project& project = opened.value();
        EXPECT_EQ(project.remark().empty(), keeping == Keeping::Log) << project.remark();
        const auto tell = [&] {
            session.told.push_back({test::RecordingDisk::events().size(), session.states.size() - 1,
                                    project.people().value().size(), project.readings().value().size()});
        };
        Document document = project.document(id).value(); // kept in step with the project's
        session.states.resize(std::max<std::size_t>(session.states.size(), 1), document.reading());
        for (int n = 0; n < 20; ++n) {
            const EditStamp stamp = stamp_by("Ida");
            const bool undo = n % 7 == 6;
            const Edit edit = test::random_edit(document, random);
            const auto made = undo ? project.undo(id, stamp) : project.edit(id, edit, stamp);
            if (made && *made) {
                (void)(undo ? document.undo(stamp) : document.make(edit, stamp));
                session.states.push_back(document.reading());
                session.log.push_back(**made);
                tell();
            }
            const std::string long_role(run == 0 ? 100'000 : 10, 'x');
            EXPECT_TRUE(project.put_person({"Sue " + std::to_string(random() % 5), long_role}, stamp).has_value());
            tell();
        }
        EXPECT_TRUE(project.add_reading(CoreId{3}, test::random_reading(random), "Read it", stamp_by("Ida")));
        tell();
    }
    session.events = test::RecordingDisk::events();
    return session;
}

/// What is wrong with what a power cut left; empty where it is what was promised.
std::string fault_of_project(const std::string& file, const Session& session, std::size_t cut) {
    Told told{0, 0, 0, 3};
    for (const Told& each : session.told) {
        told = each.events <= cut ? each : told;
    }
    const auto project = Project::open(file, Project::Access::Write);
    if (!project) {
        return project.error().line();
    }
    if (const auto sound = project->check(); !sound) {
        return sound.error().line();
    }
    const auto document = project->document(ReadingId{1});
    if (!document) {
        return document.error().line();
    }
    const auto& log = document->log();
    if (log.size() < told.edits || project->people()->size() < told.people ||
        project->readings()->size() < told.readings) {
        return "something that was told as done is lost";
    }
    if (log.size() >= session.states.size() || !std::equal(log.begin(), log.end(), session.log.begin()) ||
        document->reading() != session.states[log.size()]) {
        return "the reading is not what its edits made of it";
    }
    const auto readings = project->readings().value();
    for (const ReadingEntry& entry : readings) {
        if (const auto one = project->document(entry.id); !one) {
            return "half of a reading is there: " + one.error().line();
        }
    }
    return {};
}

/// The same, of a power cut after so many events.
std::string fault_after(const test::Files& left, const Session& session, std::size_t cut) {
    const test::TemporaryFolder folder;
    const std::string file = folder.file("a.pithward");
    for (const auto& [ending, bytes] : left) {
        std::ofstream(file + ending, std::ios::binary) << bytes;
    }
    return fault_of_project(file, session, cut);
}

constexpr std::array all_losses{Unsynced::Torn, Unsynced::Lost, Unsynced::Some, Unsynced::Prefix, Unsynced::Kept};

int wanted_cuts() {
    const char* text = std::getenv("PITHWARD_POWER_CUTS");
    return text == nullptr ? 25 : std::atoi(text);
}

/// Temporary folders in memory, where the system has such a disk: there, a sync takes no time.
class InMemory {
public:
    InMemory() {
        if (::access("/dev/shm", W_OK | X_OK) == 0) {
            ::setenv("TMPDIR", "/dev/shm", 1);
        }
    }
    ~InMemory() { before_.empty() ? ::unsetenv("TMPDIR") : ::setenv("TMPDIR", before_.c_str(), 1); }
    InMemory(const InMemory&) = delete;
    InMemory& operator=(const InMemory&) = delete;

private:
    std::string before_ = ::getenv("TMPDIR") == nullptr ? "" : ::getenv("TMPDIR");
};

class PowerCutTrial : public testing::TestWithParam<Keeping> {};

TEST_P(PowerCutTrial, WhatWasToldIsThereAndNothingIsHalfThere) {
    const unsigned seed = std::random_device()();
    std::mt19937 random(seed);
    const InMemory in_memory;
    const test::TemporaryFolder folder;
    const Session session = recorded_session(folder.file("a.pithward"), GetParam(), seed);
    const bool each = wanted_cuts() == 0;
    const std::size_t count = session.events.size() + 1;
    const std::size_t cuts = each ? count * all_losses.size() : static_cast<std::size_t>(wanted_cuts());
    for (std::size_t n = 0; n < cuts; ++n) {
        const std::size_t cut = each ? n / all_losses.size() : random() % count;
        const Unsynced unsynced = all_losses[n % all_losses.size()];
        const auto left = test::after_power_cut(session.before, std::span(session.events).first(cut), unsynced, random);
        ASSERT_EQ(fault_after(left, session, cut), "") << "seed " << seed << ", event " << cut << " of "
                                                       << session.events.size() << ", loss " << n % all_losses.size();
    }
    std::printf("%zu power cuts in a session of %zu events and %zu edits, seed %u\n", cuts, session.events.size(),
                session.log.size(), seed);
}

INSTANTIATE_TEST_SUITE_P(All, PowerCutTrial, testing::Values(Keeping::Log, Keeping::NoLog, Keeping::Network),
                         [](const auto& kind) {
                             return kind.param == Keeping::Log     ? "Log"
                                    : kind.param == Keeping::NoLog ? "NoLog"
                                                                   : "Network";
                         });

TEST(PowerCut, ADiskThatLiesLosesWhatWasTold) {
    // Shows that the trial would notice: the same session on a disk that says it has written what it has not.
    std::mt19937 random(1);
    const InMemory in_memory;
    const test::TemporaryFolder folder;
    for (const Keeping keeping : {Keeping::Log, Keeping::Network}) {
        const Session session = recorded_session(folder.file(std::to_string(int(keeping))), keeping, 1);
        const std::size_t cut = session.events.size();
        const auto left = test::after_power_cut(session.before, session.events, Unsynced::Lost, random, true);
        EXPECT_EQ(fault_after(left, session, cut), "something that was told as done is lost");
        const auto whole = test::after_power_cut(session.before, session.events, Unsynced::Kept, random, true);
        EXPECT_EQ(fault_after(whole, session, cut), "");
    }
}

} // namespace
} // namespace pithward::record
