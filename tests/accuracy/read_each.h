#pragma once

#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"
#include "tests/accuracy/case_folder.h"

#include <cstddef>
#include <functional>
#include <span>
#include <string>

namespace pithward::accuracy {

/// A core read and measured.
struct ReadCore {
    Reading reading;
    RingSeries series;
};

/// How cores are read.
struct ReadingWay {
    unsigned threads = 0;    ///< 0: all processors of the machine.
    std::string kept_folder; ///< Readings are taken from there, or kept there as NAME.reading.json; empty: neither.
};

/// Reads each core along its true path, its wood given and its outer end not, as `pithward measure` does, and hands it
/// over with the core's place in the list. One thread a core: `with` is called from several threads. A core that can't
/// be read is told on standard error.
void read_each(std::span<const Case> cases, const std::function<void(std::size_t, const Outcome<ReadCore>&)>& with,
               const ReadingWay& way = {});

} // namespace pithward::accuracy
