#pragma once

#include "libcore/specimen/outcome.h"

#include <string>
#include <vector>

namespace pithward::batch {

/// The cores of one scan that were found and could not be measured, gathered by what was wrong.
class DroppedCores {
public:
    DroppedCores(std::string scan, std::size_t found)
        : scan_(std::move(scan))
        , found_(found) {}

    /// `index` of the core among those found, from 0.
    void add(std::size_t index, const Fault& fault);

    /// One fault for each thing that was wrong, with the numbers of its cores.
    [[nodiscard]] std::vector<Fault> by_kind() const;
    /// All of them as one fault, for a scan none of whose cores could be measured.
    [[nodiscard]] Fault all() const;

private:
    struct Kind {
        Fault fault;
        std::vector<std::size_t> numbers;
    };

    std::string scan_;
    std::size_t found_;
    std::vector<Kind> kinds_;
};

} // namespace pithward::batch
