// `pithward measure PROJECT` killed at a random moment: what it told of is there, and nothing is half there.
#include "libcore/edit/document.h"
#include "libcore/record/project.h"
#include "tests/support/rendered_scan.h"
#include "tests/support/temporary_folder.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <map>
#include <random>

namespace pithward::test {
namespace {

namespace fs = std::filesystem;

constexpr int killed_cores = 6;

/// Begins to measure a project.
pid_t measuring(const std::string& project, const std::string& told) {
    const pid_t child = ::fork();
    if (child == 0) {
        const int out = ::open(told.c_str(), O_CREAT | O_WRONLY | O_APPEND, 0600);
        ::dup2(out, STDERR_FILENO);
        ::execl(PITHWARD_PROGRAM, PITHWARD_PROGRAM, "measure", project.c_str(), nullptr);
        ::_exit(127);
    }
    return child;
}

/// Waits for its end; true where it ended by itself and well.
bool ended_well(pid_t child) {
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

/// Kills it after some milliseconds; true where it had ended before.
bool ended_before(pid_t child, int ms) {
    ::usleep(static_cast<useconds_t>(ms) * 1000U);
    (void)::kill(child, SIGKILL);
    return ended_well(child);
}

std::size_t lines_with(const std::string& file, const std::string& words) {
    const std::string text = fs::exists(file) ? bytes_of(file) : std::string();
    std::size_t count = 0;
    for (std::size_t at = text.find(words); at != std::string::npos; at = text.find(words, at + 1)) {
        ++count;
    }
    return count;
}

/// Looks at everything that a project holds; answers with how many readings there are.
std::size_t readings_of_a_sound(const std::string& file) {
    const auto project = record::Project::open(file, record::Project::Access::Write);
    EXPECT_TRUE(project.has_value()) << (project ? "" : project.error().line());
    EXPECT_TRUE(project->check().has_value());
    const auto readings = project->readings().value();
    for (const record::ReadingEntry& entry : readings) {
        const auto document = project->document(entry.id);
        EXPECT_TRUE(document.has_value()) << (document ? "" : document.error().line());
        EXPECT_EQ(std::ssize(document->reading().boundaries), entry.boundaries);
        EXPECT_GT(entry.boundaries, 5) << "a reading is there whole or not at all";
    }
    EXPECT_EQ(project->cores()->size(), static_cast<std::size_t>(killed_cores));
    const auto history = project->history().value();
    const auto begun = std::ranges::count_if(history, [](const auto& line) { return !line.edit; });
    EXPECT_EQ(begun, std::ssize(readings) + 1) << "each reading with its line of the history";
    return readings.size();
}

/// What a project tells of its piths, by core.
std::map<std::int64_t, std::optional<Pith>> piths_of(const std::string& file) {
    const auto project = record::Project::open(file, record::Project::Access::Write);
    std::map<std::int64_t, std::optional<Pith>> piths;
    const auto readings = project->readings().value();
    for (const record::ReadingEntry& entry : readings) {
        piths[entry.core.value] = project->document(entry.id)->reading().pith;
    }
    return piths;
}

std::size_t lines_of_history(const std::string& file) {
    return record::Project::open(file, record::Project::Access::Write)->history()->size();
}

TEST(KilledMeasureTrial, WhatWasToldIsThereAndNothingIsHalfThere) {
    const TemporaryFolder folder;
    const std::string scan = rendered_scan(folder, clear_scene(7, 1, 12)).scan.header().file;
    const std::string ending = fs::path(scan).extension().string();
    std::string sheet = "site,tree,core\n";
    for (int i = 1; i <= killed_cores; ++i) {
        const std::string core = "H0" + std::to_string(i) + "A";
        sheet.append("Hill,").append(core).append(",").append(core).append("\n");
        fs::copy_file(scan, folder.file(core + ending));
    }
    fs::remove(scan);
    (void)folder.write("sheet.csv", sheet);
    const std::string create =
        "cd '" + folder.file("") + "' && '" PITHWARD_PROGRAM "' create whole.pithward --sheet sheet.csv 2> said.log";
    ASSERT_EQ(std::system(create.c_str()), 0) << bytes_of(folder.file("said.log"));

    const char* wanted = std::getenv("PITHWARD_KILLS");
    const int kills = wanted == nullptr ? 5 : std::atoi(wanted);
    std::random_device device;
    const unsigned seed = device();
    std::mt19937 random(seed);
    const std::string file = folder.file("a.pithward");
    std::size_t told_of_all = 0;
    bool fresh = true;
    for (int n = 0; n < kills; ++n) {
        if (fresh) {
            fs::copy_file(folder.file("whole.pithward"), file, fs::copy_options::overwrite_existing);
            fs::remove(folder.file("told"));
        }
        fresh = ended_before(measuring(file, folder.file("told")), 30 + static_cast<int>(random() % 900));
        const std::size_t told = lines_with(folder.file("told"), " rings, ");
        const std::size_t there = readings_of_a_sound(file);
        ASSERT_GE(there, told) << "seed " << seed << ", kill " << n;
        ASSERT_LE(there, static_cast<std::size_t>(killed_cores)) << "none is there twice";
        told_of_all += told;
    }
    EXPECT_TRUE(ended_well(measuring(file, folder.file("told")))) << "it ends where nobody ends it";
    const std::string never_killed = folder.file("never_killed.pithward");
    fs::copy_file(folder.file("whole.pithward"), never_killed);
    EXPECT_TRUE(ended_well(measuring(never_killed, folder.file("told"))));
    EXPECT_EQ(piths_of(file), piths_of(never_killed)) << "judged by the site's other cores, seed " << seed;
    const std::size_t lines = lines_of_history(file);
    EXPECT_TRUE(ended_well(measuring(file, folder.file("told"))));
    EXPECT_EQ(lines_of_history(file), lines) << "measuring what is measured changes nothing";
    std::printf("%d kills, seed %u, %zu readings told\n", kills, seed, told_of_all);
}

} // namespace
} // namespace pithward::test
