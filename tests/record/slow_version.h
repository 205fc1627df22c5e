#pragma once

#include <array>

namespace pithward::test {

inline constexpr int slow_rows = 400'000;

/// A made-up version of the tables that takes a while to make.
inline constexpr std::array slow_version{
    "ALTER TABLE person ADD COLUMN initials TEXT NOT NULL DEFAULT ''",
    "CREATE TABLE slow AS WITH RECURSIVE number (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM number WHERE i < 400000) "
    "SELECT i, i * i AS square FROM number",
    "UPDATE person SET initials = substr(name, 1, 1)",
};

} // namespace pithward::test
