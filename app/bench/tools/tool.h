#pragma once

#include "libcore/specimen/units.h"

#include <QString>
#include <optional>
#include <vector>

namespace pithward::bench {

/// What a person has drawn: a path from bark to pith, or the edges of a break.
struct DrawnPath {
    std::vector<ImagePoint> points;
    friend bool operator==(const DrawnPath&, const DrawnPath&) = default;
};

/// What a tool answers to a gesture.
struct ToolAnswer {
    bool finished = false;           ///< The tool is put away.
    std::optional<DrawnPath> result; ///< What it was for; nothing when it was given up.
};

/// A tool that works on the scan. Gestures reach it in image coordinates; it sees no window and changes no document.
/// A drag always pans the scan, whatever tool is in hand.
class Tool {
public:
    enum class Key { Finish, GiveUp, TakeBack, Reverse };

    virtual ~Tool() = default;
    virtual ToolAnswer click(ImagePoint at) = 0;
    virtual ToolAnswer double_click(ImagePoint at) = 0;
    virtual void move(ImagePoint at) = 0;
    virtual ToolAnswer key(Key key) = 0;

    /// What a click will do now, in a few words.
    [[nodiscard]] virtual QString hint() const = 0;
    /// The line to preview in the order of the clicks, with the cursor as its free end.
    [[nodiscard]] virtual std::vector<ImagePoint> preview() const = 0;
    /// The word that stands at the first point of the preview; empty for none.
    [[nodiscard]] virtual QString first_word() const = 0;
};

} // namespace pithward::bench
