#pragma once

#include "app/bench/tools/tool.h"

#include <utility>

namespace pithward::bench {

/// Takes one place by a click. Take back (also the right button) and give up put it away, and nothing is done.
class PointTool : public Tool {
public:
    /// `hint`: what a click will do.
    explicit PointTool(QString hint)
        : hint_(std::move(hint)) {}

    ToolAnswer click(ImagePoint at) override { return {true, DrawnPath{{at}}}; }
    ToolAnswer double_click(ImagePoint at) override { return click(at); }
    void move(ImagePoint /*at*/) override {}
    ToolAnswer key(Key key) override { return {key == Key::GiveUp || key == Key::TakeBack, std::nullopt}; }
    [[nodiscard]] QString hint() const override { return hint_; }
    [[nodiscard]] std::vector<ImagePoint> preview() const override { return {}; }
    [[nodiscard]] QString first_word() const override { return {}; }

private:
    QString hint_;
};

} // namespace pithward::bench
