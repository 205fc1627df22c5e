#pragma once

#include "libcore/specimen/edit.h"

#include <span>
#include <string>

namespace pithward::review {

/// How much of a reading was looked at, and by whom.
struct Standing {
    Reading::State state = Reading::State::Proposed;
    std::string marked_by; ///< Who last said that it is done, or changed it after it was passed; empty where nobody.
    std::string passed_by; ///< Empty unless it is passed now.
    bool passer_marked = false;  ///< The same person did both, so no second person has looked at it.
    bool passer_changed = false; ///< Who passed it also changed what is measured: of that no second person has seen.
    int boundaries = 0;
    int looked_at = 0; ///< Of the boundaries ...
    int in_bulk = 0;   ///< ... and these; nobody has confirmed the rest.
    int findings = 0;
    int open_findings = 0;
    friend bool operator==(const Standing&, const Standing&) = default;
};

/// From a reading and the log of its edits. What was undone does not count.
[[nodiscard]] Standing standing(const Reading& reading, std::span<const EditRecord> log);

/// Of several readings together: counts added up. Names are left empty; state is that of the least advanced one.
[[nodiscard]] Standing together(std::span<const Standing> all);

/// "8 looked at, 110 confirmed in bulk, 2 confirmed by nobody", of the boundaries.
[[nodiscard]] std::string told_looks(const Standing& standing);
/// "120 boundaries: 8 looked at, 110 confirmed in bulk, 2 confirmed by nobody".
[[nodiscard]] std::string told_counts(const Standing& standing);
/// "marked by Ida, passed by Udo", "proposed by the program", "passed by Ida, who marked it too".
[[nodiscard]] std::string told_people(const Standing& standing);

} // namespace pithward::review
