// `pithward measure PROJECT` killed at a random moment: what it told of is there, and nothing is half there.
#include "libcore/edit/document.h"
#include "libcore/record/project.h"
#include "tests/support/rendered_scan.h"
#include "tests/support/temporary_folder.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <random>

namespace pithward::test {
namespace {

namespace fs = std::filesystem;

constexpr int killed_cores = 6;

/// Measures the project and kills that after some milliseconds; true where it ended by itself before.
bool measured_and_killed(const std::string& project, const std::string& told, int ms) {
    const pid_t child = ::fork();
    if (child == 0) {
        const int out = ::open(told.c_str(), O_CREAT | O_WRONLY | O_APPEND, 0600);
        ::dup2(out, STDERR_FILENO);
        ::execl(PITHWARD_PROGRAM, PITHWARD_PROGRAM, "measure", project.c_str(), nullptr);
        ::_exit(127);
    }
    ::usleep(static_cast<useconds_t>(ms) * 1000U);
    (void)::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    return !WIFSIGNALED(status);
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
    EXPECT_EQ(project->history()->size(), readings.size() + 1) << "each reading with its line of the history";
    return readings.size();
}

TEST(KilledMeasure, WhatWasToldIsThereAndNothingIsHalfThere) {
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
        fresh = measured_and_killed(file, folder.file("told"), 30 + static_cast<int>(random() % 900));
        const std::size_t told = lines_with(folder.file("told"), " rings, ");
        const std::size_t there = readings_of_a_sound(file);
        ASSERT_GE(there, told) << "seed " << seed << ", kill " << n;
        ASSERT_LE(there, static_cast<std::size_t>(killed_cores)) << "none is there twice";
        told_of_all += told;
    }
    std::printf("%d kills, seed %u, %zu readings told\n", kills, seed, told_of_all);
}

} // namespace
} // namespace pithward::test
