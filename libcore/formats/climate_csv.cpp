#include "libcore/formats/climate_csv.h"

#include "libcore/formats/csv_rows.h"
#include "libcore/formats/text_input.h"

#include <algorithm>
#include <optional>
#include <set>
#include <utility>
#include <vector>

namespace pithward {

using namespace formats;

namespace {

constexpr std::size_t most_climate_bytes = std::size_t{16} << 20;

std::optional<int> month_from(std::string_view text) {
    static constexpr std::array names{"january", "february", "march",     "april",   "may",      "june",
                                      "july",    "august",   "september", "october", "november", "december"};
    const std::string word = lower_case(text);
    for (std::size_t k = 0; k < names.size(); ++k) {
        if (word == names[k] || word == std::string_view(names[k]).substr(0, 3)) {
            return static_cast<int>(k) + 1;
        }
    }
    const auto number = whole_number(word.starts_with('0') ? std::string_view(word).substr(1) : word);
    return number && *number >= 1 && *number <= results::months_a_year ? number : std::nullopt;
}

bool stands_for_none(std::string_view text) {
    static constexpr std::array words{"",        "na",    "nan",  "-99.9",   "-99.99", "-999.9",
                                      "-999.99", "-9999", "-999", "-9999.0", "-99,9",  "-999,9"};
    return std::ranges::find(words, lower_case(text)) != words.end();
}

/// Takes the rows one by one.
class ClimateRows {
public:
    explicit ClimateRows(CsvDialect dialect)
        : dialect_(dialect) {}

    Outcome<void> take(const CsvRow& row) {
        if (!year_) {
            return row.front().text.starts_with('#') ? Outcome<void>() : take_titles(row);
        }
        const CsvField& at = *year_ < row.size() ? row[*year_] : row.front();
        const auto year = *year_ < row.size() ? whole_number(at.text) : std::nullopt;
        if (!year || *year < least_year || *year > greatest_year) {
            return csv_fault(at, "\"" + at.text + "\" is no year", "give years from -20000 to 20000");
        }
        return value_ ? take_month(row, *year) : take_year(row, *year);
    }

    Outcome<results::MonthlyClimate> finish() {
        const bool any = std::ranges::any_of(climate_, [](const auto& year) {
            return std::ranges::any_of(year.second, [](const auto& value) { return value.has_value(); });
        });
        if (!any) {
            return fail("", "there is no climate value in it",
                        "give year and twelve months a row, or year,month,value");
        }
        return std::move(climate_);
    }

private:
    Outcome<void> take_titles(const CsvRow& row) {
        std::optional<std::size_t> month;
        for (std::size_t k = 0; k < row.size(); ++k) {
            const std::string title = lower_case(row[k].text);
            if (title == "year") {
                year_ = k;
            } else if (title == "month") {
                month = k;
            } else if (title == "value") {
                value_ = k;
            } else if (const auto number = month_from(title)) {
                months_.emplace_back(k, *number);
            }
        }
        if (month && value_) {
            months_ = {{*month, 0}};
        } else {
            value_.reset();
        }
        if (!year_ || months_.empty() || (!value_ && months_.size() != results::months_a_year)) {
            return csv_fault(row.front(), "the header row names neither year and twelve months nor year, month, value",
                             "begin with year,jan,feb,mar,apr,may,jun,jul,aug,sep,oct,nov,dec or year,month,value");
        }
        for (std::size_t k = 1; k < months_.size(); ++k) {
            for (std::size_t i = 0; i < k; ++i) {
                if (months_[i].second == months_[k].second) {
                    return csv_fault(row[months_[k].first], "the month is there twice", "leave one column out");
                }
            }
        }
        return {};
    }

    Outcome<void> take_month(const CsvRow& row, int year) {
        const std::size_t at = months_.front().first;
        const auto month = at < row.size() ? month_from(row[at].text) : std::nullopt;
        if (!month) {
            return csv_fault(row[std::min(at, row.size() - 1)], "this is no month", "give 1 to 12 or the month's name");
        }
        return put(row, *value_, year, *month);
    }

    Outcome<void> take_year(const CsvRow& row, int year) {
        for (const auto& [column, month] : months_) {
            if (auto done = put(row, column, year, month); !done) {
                return done;
            }
        }
        return {};
    }

    Outcome<void> put(const CsvRow& row, std::size_t column, int year, int month) {
        auto& cell = climate_[year][static_cast<std::size_t>(month - 1)];
        const CsvField& at = column < row.size() ? row[column] : row.back();
        const std::string text = column < row.size() ? at.text : std::string();
        if (!seen_.insert({year, month}).second) {
            return csv_fault(at, "month " + std::to_string(month) + " of " + std::to_string(year) + " is there twice",
                             "leave one out");
        }
        if (stands_for_none(text)) {
            return {};
        }
        cell = decimal_number(text, dialect_.decimal_comma());
        constexpr double greatest = 1e9; // Nothing that is measured of weather is greater.
        if (!cell || *cell > greatest || *cell < -greatest) {
            return csv_fault(at, "\"" + text + "\" is no climate value", "give a number, or leave the cell empty");
        }
        return {};
    }

    CsvDialect dialect_;
    std::optional<std::size_t> year_;
    std::optional<std::size_t> value_;
    std::vector<std::pair<std::size_t, int>> months_; ///< Column and month; the column of months with `value_`.
    std::set<std::pair<int, int>> seen_;
    results::MonthlyClimate climate_;
};

} // namespace

Outcome<results::MonthlyClimate> read_climate_csv(std::istream& in) {
    const auto text = read_utf8(in, most_climate_bytes);
    if (!text) {
        return tl::unexpected(text.error());
    }
    const CsvDialect dialect = csv_dialect(*text);
    ClimateRows rows(dialect);
    const auto read = read_csv_rows(*text, dialect, [&](const CsvRow& row) { return rows.take(row); });
    return read ? rows.finish() : tl::unexpected(read.error());
}

} // namespace pithward
