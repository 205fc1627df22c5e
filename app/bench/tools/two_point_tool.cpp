#include "app/bench/tools/two_point_tool.h"

namespace pithward::bench {

ToolAnswer TwoPointTool::click(ImagePoint at) {
    if (!first_) {
        first_ = at;
        return {};
    }
    return *first_ == at ? ToolAnswer{} : ToolAnswer{true, DrawnPath{{*first_, at}}};
}

ToolAnswer TwoPointTool::double_click(ImagePoint at) {
    return click(at);
}

void TwoPointTool::move(ImagePoint at) {
    cursor_ = at;
}

ToolAnswer TwoPointTool::key(Key key) {
    if (key == Key::GiveUp || (key == Key::TakeBack && !first_)) {
        return {true, std::nullopt};
    }
    if (key == Key::TakeBack) {
        first_.reset();
    }
    return {};
}

QString TwoPointTool::hint() const {
    return first_ ? second_hint_ : first_hint_;
}

std::vector<ImagePoint> TwoPointTool::preview() const {
    if (!first_) {
        return {};
    }
    return cursor_ ? std::vector{*first_, *cursor_} : std::vector{*first_};
}

} // namespace pithward::bench
