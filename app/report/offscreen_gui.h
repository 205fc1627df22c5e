#pragma once

#include <memory>

class QGuiApplication;

namespace pithward::report {

/// What letters on a picture need where there is no window: an application without a display, unless there is an
/// application already. Lives as long as pictures are drawn.
class OffscreenGui {
public:
    OffscreenGui();
    ~OffscreenGui();
    OffscreenGui(const OffscreenGui&) = delete;
    OffscreenGui& operator=(const OffscreenGui&) = delete;

private:
    std::unique_ptr<QGuiApplication> application_;
};

} // namespace pithward::report
