#include "libcore/results/climate_windows.h"

namespace pithward::results {

namespace {

constexpr int half_year = 6;

const char* name_of(int month) {
    static constexpr std::array names{"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                      "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
    return names[static_cast<std::size_t>(month % months_a_year)];
}

const char* year_word(int month) {
    return month < months_a_year ? " before" : month >= 2 * months_a_year ? " after" : "";
}

} // namespace

std::vector<ClimateWindow> climate_windows(Hemisphere hemisphere) {
    constexpr int may_before = 4;
    constexpr int october = months_a_year + 9;
    std::vector<ClimateWindow> windows;
    for (int month = may_before; month <= october; ++month) {
        windows.push_back({month, month});
    }
    for (const auto& [first, last] : {std::pair(5, 7), std::pair(8, 10), std::pair(11, 13), std::pair(14, 16),
                                      std::pair(17, 19), std::pair(15, 20)}) {
        windows.push_back({first, last});
    }
    for (ClimateWindow& window : windows) {
        window.first += hemisphere == Hemisphere::South ? half_year : 0;
        window.last += hemisphere == Hemisphere::South ? half_year : 0;
    }
    return windows;
}

std::string words_of(const ClimateWindow& window) {
    const std::string last = name_of(window.last);
    if (window.first == window.last) {
        return last + year_word(window.last);
    }
    const std::string first = name_of(window.first);
    const bool one_year = window.first / months_a_year == window.last / months_a_year;
    return first + (one_year ? "" : year_word(window.first)) + " to " + last + year_word(window.last);
}

dating::YearSeries window_means(const MonthlyClimate& climate, const ClimateWindow& window) {
    dating::YearSeries means;
    if (climate.empty()) {
        return means;
    }
    // A ring's year may be the one before or after a year of the climate series.
    means.first_year = climate.begin()->first - 1;
    means.values = Eigen::ArrayXd::Constant(climate.rbegin()->first + 1 - means.first_year + 1, dating::none);
    for (int k = 0; k < means.size(); ++k) {
        double sum = 0.0;
        bool whole = true;
        for (int month = window.first; month <= window.last && whole; ++month) {
            const auto year = climate.find(means.first_year + k - 1 + month / months_a_year);
            const auto value =
                year == climate.end() ? std::nullopt : year->second[static_cast<std::size_t>(month % months_a_year)];
            whole = value.has_value();
            sum += value.value_or(0.0);
        }
        if (whole) {
            means.values(k) = sum / (window.last - window.first + 1);
        }
    }
    return means;
}

} // namespace pithward::results
