#pragma once

#include "app/bench/tools/tool.h"

#include <utility>

namespace pithward::bench {

/// Takes two places by two clicks: the edges of a break, the ends of a line along a ruler. Take back (also the right
/// button) removes the first; with none set the tool is put away. Give up puts it away, and nothing is drawn.
class TwoPointTool : public Tool {
public:
    /// What is said before the first click and before the second.
    TwoPointTool(QString first_hint, QString second_hint)
        : first_hint_(std::move(first_hint))
        , second_hint_(std::move(second_hint)) {}

    ToolAnswer click(ImagePoint at) override;
    ToolAnswer double_click(ImagePoint at) override;
    void move(ImagePoint at) override;
    ToolAnswer key(Key key) override;
    [[nodiscard]] QString hint() const override;
    [[nodiscard]] std::vector<ImagePoint> preview() const override;
    [[nodiscard]] QString first_word() const override { return {}; }

private:
    QString first_hint_;
    QString second_hint_;
    std::optional<ImagePoint> first_;
    std::optional<ImagePoint> cursor_;
};

} // namespace pithward::bench
