#pragma once

#include "app/bench/window/main_window.h"
#include "tests/app/fake_scan.h"
#include "tests/record/made_up_project.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>

#include <string>

namespace pithward::bench {

/// A project of four cores of fake scans: H01A and H01B (one tree) are read, H02A is not, H02B has no scan.
class FakeProject : public testing::Test {
protected:
    void SetUp() override;

    /// Opens the project in a window of this person, and waits for its first core.
    void open(MainWindow& window, const std::string& who);
    /// Waits until the store has answered everything.
    static bool written(MainWindow& window);

    test::TemporaryFolder folder;
    std::string file = folder.file("hill.pithward");
};

} // namespace pithward::bench
