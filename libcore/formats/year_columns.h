#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/width_series.h"

#include <cstddef>
#include <string>
#include <vector>

namespace pithward::formats {

/// Gathers series from a table with years down and series across. Empty cells are never put in: between the values of a
/// series they become gaps, outside them nothing.
class YearColumns {
public:
    /// One column for each identifier.
    explicit YearColumns(std::vector<std::string> identifiers);

    /// A width, and with how many decimals it was written.
    void put_year(std::size_t column, int year, double width_mm, std::size_t decimals);
    /// The same in an undated series. Rings are numbered from the bark, from 1.
    void put_ring(std::size_t column, int ring, double width_mm, std::size_t decimals);

    /// The series in the order of the columns; equal identifiers are told apart, and columns without a value are left
    /// out, both with a remark.
    [[nodiscard]] Outcome<WidthTable> table() const;

private:
    struct Cell {
        int at = 0; ///< A year or a ring.
        double width_mm = 0.0;
    };
    struct Column {
        std::string identifier;
        std::vector<Cell> years;
        std::vector<Cell> rings;
        std::size_t decimals = 0;
    };

    [[nodiscard]] static WidthSeries series_of(const Column& column);

    std::vector<Column> columns_;
};

} // namespace pithward::formats
