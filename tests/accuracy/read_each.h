#pragma once

#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"
#include "tests/accuracy/case_folder.h"

#include <cstddef>
#include <functional>
#include <span>

namespace pithward::accuracy {

/// A core read and measured.
struct ReadCore {
    Reading reading;
    RingSeries series;
};

/// Reads each core along its true path, its wood given and its outer end not, as `pithward measure` does, and hands it
/// over with the core's place in the list. One thread a core, all processors of the machine: `with` is called from
/// several threads. A core that can't be read is told on standard error.
void read_each(std::span<const Case> cases, const std::function<void(std::size_t, const Outcome<ReadCore>&)>& with);

} // namespace pithward::accuracy
