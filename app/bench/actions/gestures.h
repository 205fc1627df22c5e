#pragma once

#include <span>

namespace pithward::bench {

/// What the mouse does on the scan, and keys that are held: for the sheet of keys. Both texts are to be translated in
/// the context "Gestures".
struct Gesture {
    const char* how;
    const char* help;
};

[[nodiscard]] std::span<const Gesture> gestures();

} // namespace pithward::bench
