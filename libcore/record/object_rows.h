#pragma once

#include "libcore/record/connection.h"
#include "libcore/specimen/reading.h"

#include <vector>

namespace pithward::record {

// One row for each object of a reading's lists.

[[nodiscard]] Outcome<void> insert_object(const Connection& connection, ReadingId reading, const Boundary& boundary);
[[nodiscard]] Outcome<void> insert_object(const Connection& connection, ReadingId reading, const Candidate& candidate);
[[nodiscard]] Outcome<void> insert_object(const Connection& connection, ReadingId reading, const Break& stretch);
[[nodiscard]] Outcome<void> insert_object(const Connection& connection, ReadingId reading, const AbsentRing& ring);
[[nodiscard]] Outcome<void> insert_object(const Connection& connection, ReadingId reading, const Finding& finding);

[[nodiscard]] Outcome<void> delete_object(const Connection& connection, ReadingId reading, const Boundary& boundary);
[[nodiscard]] Outcome<void> delete_object(const Connection& connection, ReadingId reading, const Candidate& candidate);
[[nodiscard]] Outcome<void> delete_object(const Connection& connection, ReadingId reading, const Break& stretch);
[[nodiscard]] Outcome<void> delete_object(const Connection& connection, ReadingId reading, const AbsentRing& ring);
[[nodiscard]] Outcome<void> delete_object(const Connection& connection, ReadingId reading, const Finding& finding);

[[nodiscard]] Outcome<std::vector<Boundary>> read_boundaries(const Connection& connection, ReadingId reading);
[[nodiscard]] Outcome<std::vector<Candidate>> read_candidates(const Connection& connection, ReadingId reading);
[[nodiscard]] Outcome<std::vector<Break>> read_breaks(const Connection& connection, ReadingId reading);
[[nodiscard]] Outcome<std::vector<AbsentRing>> read_absent_rings(const Connection& connection, ReadingId reading);
[[nodiscard]] Outcome<std::vector<Finding>> read_findings(const Connection& connection, ReadingId reading);

} // namespace pithward::record
