#pragma once

#include "app/report/paper/page_text.h"
#include "libcore/specimen/outcome.h"

#include <cstddef>
#include <functional>
#include <string>

namespace pithward::report {

/// A millimetre on a page, in page units.
inline constexpr double page_mm = 72.0 / 25.4 * page_unit;

// A4 (ISO 216), in mm.
inline constexpr double paper_long_mm = 297.0;
inline constexpr double paper_short_mm = 210.0;

enum class PaperTurn { Upright, Sideways };

/// A PDF of so many A4 pages, painted one after the other in page units from the upper left corner of the paper. Needs
/// an application (offscreen_gui.h).
[[nodiscard]] Outcome<std::string> printed_pages(const std::string& title, PaperTurn turn, std::size_t pages,
                                                 const std::function<void(QPainter&, std::size_t page)>& paint);

} // namespace pithward::report
