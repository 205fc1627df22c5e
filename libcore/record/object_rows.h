#pragma once

#include "libcore/record/connection.h"
#include "libcore/specimen/reading.h"

#include <vector>

namespace pithward::record {

// One row for each object of a reading's lists: Boundary, Candidate, Break, AbsentRing, Finding.

template <typename T>
[[nodiscard]] Outcome<void> insert_object(const Connection& connection, ReadingId reading, const T& object);
/// Writes what has changed over the row of the same number.
template <typename T>
[[nodiscard]] Outcome<void> update_object(const Connection& connection, ReadingId reading, const T& object);
template <typename T>
[[nodiscard]] Outcome<void> delete_object(const Connection& connection, ReadingId reading, const T& object);

[[nodiscard]] Outcome<std::vector<Boundary>> read_boundaries(const Connection& connection, ReadingId reading);
[[nodiscard]] Outcome<std::vector<Candidate>> read_candidates(const Connection& connection, ReadingId reading);
[[nodiscard]] Outcome<std::vector<Break>> read_breaks(const Connection& connection, ReadingId reading);
[[nodiscard]] Outcome<std::vector<AbsentRing>> read_absent_rings(const Connection& connection, ReadingId reading);
[[nodiscard]] Outcome<std::vector<Finding>> read_findings(const Connection& connection, ReadingId reading);

} // namespace pithward::record
