#include "app/bench/tools/draw_path_tool.h"

#include "app/picture/marks_layer.h"

#include <algorithm>

namespace pithward::bench {

ToolAnswer DrawPathTool::click(ImagePoint at) {
    if (points_.empty() || points_.back() != at) {
        points_.push_back(at);
    }
    return {};
}

ToolAnswer DrawPathTool::double_click(ImagePoint) {
    return finish(); // its first click has set the point
}

void DrawPathTool::move(ImagePoint at) {
    cursor_ = at;
}

ToolAnswer DrawPathTool::key(Key key) {
    switch (key) {
    case Key::Finish:
        return finish();
    case Key::GiveUp:
        return {true, std::nullopt};
    case Key::TakeBack:
        if (points_.empty()) {
            return {true, std::nullopt};
        }
        points_.pop_back();
        return {};
    case Key::Reverse:
        reversed_ = !reversed_;
        return {};
    }
    return {};
}

ToolAnswer DrawPathTool::finish() {
    if (points_.size() < 2) {
        return {};
    }
    std::vector<ImagePoint> path = points_;
    if (reversed_) {
        std::ranges::reverse(path);
    }
    return {true, DrawnPath{std::move(path)}};
}

QString DrawPathTool::hint() const {
    const QString start = reversed_ ? tr("pith end") : tr("bark end");
    const QString end = reversed_ ? tr("bark") : tr("pith");
    if (points_.empty()) {
        return tr("Draw path: click the %1. R starts at the other end, Escape gives up.").arg(start);
    }
    if (points_.size() == 1) {
        return tr("Draw path: click on toward the %1. Backspace takes a point back, Escape gives up.").arg(end);
    }
    return tr("Draw path: click on toward the %1, Enter measures. Backspace takes a point back, Escape gives up.")
        .arg(end);
}

QString DrawPathTool::first_word() const {
    return reversed_ ? picture::mark_words().inner : picture::mark_words().bark;
}

std::vector<ImagePoint> DrawPathTool::preview() const {
    std::vector<ImagePoint> line = points_;
    if (cursor_ && !line.empty() && line.back() != *cursor_) {
        line.push_back(*cursor_);
    }
    return line;
}

} // namespace pithward::bench
