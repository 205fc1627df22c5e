#pragma once

#include "libcore/record/project.h"

#include <span>

namespace pithward::record {

/// What comes of holding the cores of a tree against each other.
enum class AgeFindings {
    Follow,    ///< Open findings go where the years agree by now, or tell the years of now.
    FollowAdd, ///< New ones come too, on readings that no person has confirmed anything of.
};

/// Holds the accepted readings of a tree's cores against each other, by the years of their piths, and notes where these
/// differ beyond both intervals. A finding that a person has answered or returned stays. What this changes is signed
/// "Pithward": no person's to undo. Answers with how many findings came in.
[[nodiscard]] Outcome<int> compare_tree_ages(Project& project, std::span<const CoreEntry> of_tree, AgeFindings findings,
                                             const EditStamp& stamp);

/// The same for the trees of some readings, which have just been changed: nothing new is noted.
[[nodiscard]] Outcome<void> follow_tree_ages(Project& project, std::span<const ReadingId> changed,
                                             const std::string& program_version);

} // namespace pithward::record
