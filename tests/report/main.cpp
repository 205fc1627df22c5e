#include "app/report/offscreen_gui.h"

#include <gtest/gtest.h>

/// Tests of what is written with letters: without a display.
int main(int argc, char** argv) {
    const pithward::report::OffscreenGui gui;
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
