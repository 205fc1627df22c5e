#pragma once

#include "app/bench/model/opened_scan.h"

#include <string>

namespace pithward::bench {

/// A scan without a file: 2000 x 200 px at 1200 dpi, one core with straight boundaries every 40 px along y = 100.
inline constexpr int fake_width = 2000;
inline constexpr int fake_height = 200;
inline constexpr int fake_step = 40;

[[nodiscard]] OpenedScan fake_scan(const std::string& path);

/// Opens fakes by name: "wrong..." fails, "broken..." can't be read, "untold..." has no resolution tag, "slow..." works
/// until it is stopped, all others are as above.
[[nodiscard]] Outcome<OpenedScan> open_fake(const std::string& path);

/// A reading along a path with a boundary every `fake_step` pixels from its first point.
[[nodiscard]] Reading fake_reading(const ReadingRequest& request);

/// The request that the fake core is read with.
[[nodiscard]] ReadingRequest fake_request(const std::string& scan_name);

} // namespace pithward::bench
