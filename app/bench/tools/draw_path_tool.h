#pragma once

#include "app/bench/tools/tool.h"

#include <QCoreApplication>

namespace pithward::bench {

/// Draws a path by clicks along the wood, from bark to pith, or from pith to bark when reversed.
///
/// A click sets a point. Finish, or a double click, ends with a path of at least two different points; with fewer the
/// tool stays in hand. Take back (also the right button) removes the last point; with none left the tool is put away.
/// Give up puts it away in the middle of a gesture, and nothing is drawn.
class DrawPathTool : public Tool {
    Q_DECLARE_TR_FUNCTIONS(DrawPathTool)

public:
    ToolAnswer click(ImagePoint at) override;
    ToolAnswer double_click(ImagePoint at) override;
    void move(ImagePoint at) override;
    ToolAnswer key(Key key) override;
    [[nodiscard]] QString hint() const override;
    [[nodiscard]] std::vector<ImagePoint> preview() const override;
    [[nodiscard]] QString first_word() const override;

private:
    ToolAnswer finish();

    std::vector<ImagePoint> points_;
    std::optional<ImagePoint> cursor_;
    bool reversed_ = false;
};

} // namespace pithward::bench
