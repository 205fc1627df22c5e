#pragma once

#include "app/bench/tools/tool.h"

#include <QCoreApplication>

namespace pithward::bench {

/// Takes the two edges of a break by two clicks, in either order. Take back (also the right button) removes the first
/// edge; with none set the tool is put away. Give up puts it away, and nothing is marked.
class MarkBreakTool : public Tool {
    Q_DECLARE_TR_FUNCTIONS(MarkBreakTool)

public:
    ToolAnswer click(ImagePoint at) override;
    ToolAnswer double_click(ImagePoint at) override;
    void move(ImagePoint at) override;
    ToolAnswer key(Key key) override;
    [[nodiscard]] QString hint() const override;
    [[nodiscard]] std::vector<ImagePoint> preview() const override;
    [[nodiscard]] QString first_word() const override { return {}; }

private:
    std::optional<ImagePoint> first_;
    std::optional<ImagePoint> cursor_;
};

} // namespace pithward::bench
