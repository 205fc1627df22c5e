#pragma once

#include <vector>

namespace pithward::boundary {

/// Latewood of ring-porous wood, in columns, for each boundary but the last: from the boundary inward to where the zone
/// of large vessels that the same year laid down begins. `line` is high in vessels; `boundaries` are ascending columns
/// of the same sequence. The zone lies at the ring's inner end; it is left, going outward, where the line stays under
/// half of the way between the ring's low and high for `hold` columns. 0 where no zone stands out by `least`, or where
/// it fills the ring.
[[nodiscard]] std::vector<double> latewood_beside_vessels(const std::vector<float>& line,
                                                          const std::vector<double>& boundaries, double hold,
                                                          double least);

} // namespace pithward::boundary
