#include "app/bench/tools/mark_break_tool.h"

namespace pithward::bench {

ToolAnswer MarkBreakTool::click(ImagePoint at) {
    if (!first_) {
        first_ = at;
        return {};
    }
    return *first_ == at ? ToolAnswer{} : ToolAnswer{true, DrawnPath{{*first_, at}}};
}

ToolAnswer MarkBreakTool::double_click(ImagePoint at) {
    return click(at);
}

void MarkBreakTool::move(ImagePoint at) {
    cursor_ = at;
}

ToolAnswer MarkBreakTool::key(Key key) {
    if (key == Key::GiveUp || (key == Key::TakeBack && !first_)) {
        return {true, std::nullopt};
    }
    if (key == Key::TakeBack) {
        first_.reset();
    }
    return {};
}

QString MarkBreakTool::hint() const {
    return first_ ? tr("Break: click its other edge. Backspace takes the first edge back, Escape gives up.")
                  : tr("Break: click one of its edges on the path. Escape gives up.");
}

std::vector<ImagePoint> MarkBreakTool::preview() const {
    if (!first_) {
        return {};
    }
    return cursor_ ? std::vector{*first_, *cursor_} : std::vector{*first_};
}

} // namespace pithward::bench
