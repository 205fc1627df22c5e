#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/site.h"

#include <string>
#include <vector>

namespace pithward::report {

/// A square code that a camera reads (QR code, ISO/IEC 18004), as its dark and light squares.
struct CodePicture {
    int side = 0; ///< Squares along an edge, without the light rim around it.
    std::vector<bool> dark;

    [[nodiscard]] bool is_dark(int x, int y) const {
        return dark[static_cast<std::size_t>(y) * static_cast<std::size_t>(side) + static_cast<std::size_t>(x)];
    }
};

/// Squares of light that a reader needs on each side of a code (the same standard).
inline constexpr int code_rim = 4;

/// What the code of a core holds: "SITE/CORE" (libcore/field/core_code.h), whole, whatever is printed beside it.
[[nodiscard]] std::string code_text(const Site& site, const Core& core);

/// The code of a text in UTF-8, which stays readable with up to 15 % of it lost. Fails on an empty text, on one of more
/// than 300 bytes, whose squares would be too small on a label, and on what is no UTF-8.
[[nodiscard]] Outcome<CodePicture> code_of(const std::string& text);

} // namespace pithward::report
