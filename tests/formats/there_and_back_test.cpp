// Random tables, written and read back. The seed is printed when a test fails.
#include "libcore/formats/series_formats.h"
#include "libcore/formats/steps.h"
#include "tests/formats/series_support.h"

#include <random>

namespace pithward {
namespace {

using namespace test;
using Unit = WidthSeries::Unit;

class RandomTables {
public:
    explicit RandomTables(unsigned seed)
        : random_(seed) {}

    int within(int least, int greatest) { return std::uniform_int_distribution(least, greatest)(random_); }

    WidthSeries one(const std::string& id) {
        WidthSeries result;
        result.id = id;
        result.unit = within(0, 1) == 0 ? Unit::HundredthMm : Unit::ThousandthMm;
        result.first_year = Year(within(0, 3) == 0 ? within(-9999, 9000) : within(-1100, 2020));
        const int size = within(1, 45);
        for (int i = 0; i < size; ++i) {
            result.widths.push_back(width(result.unit, i == 0 || i == size - 1));
        }
        return result;
    }

    WidthTable table() {
        WidthTable result;
        for (int i = within(0, 3); i > 0; --i) {
            result.headers.push_back(i == 2 ? "" : "XYZ some words " + std::to_string(within(0, 9999)));
        }
        for (int i = within(1, 8); i > 0; --i) {
            const std::string id =
                std::string("AB cd-9_").substr(0, static_cast<std::size_t>(within(1, 5))) + std::to_string(i);
            result.series.push_back(one(id));
        }
        return result;
    }

private:
    std::optional<Millimetres> width(Unit unit, bool at_end) {
        const int kind = within(0, 19);
        if (kind == 0 && !at_end) {
            return std::nullopt;
        }
        // Values that look like end marks, too, but for 9.99 mm in 0.01 mm, which changes the unit.
        const int steps = kind == 1 ? 0 : kind == 2 ? (unit == Unit::HundredthMm ? 9999 : 999) : within(1, 998);
        return Millimetres(steps / (unit == Unit::HundredthMm ? 100.0 : 1000.0));
    }

    std::mt19937 random_;
};

class ThereAndBack : public testing::TestWithParam<const char*> {};

TEST_P(ThereAndBack, KeepsValuesYearsIdentifiersAndGaps) {
    const unsigned seed = std::random_device{}();
    SCOPED_TRACE("seed " + std::to_string(seed));
    RandomTables random(seed);
    const SeriesFormat* format = series_format_of(std::string("x") + GetParam()).value();
    for (int i = 0; i < 300; ++i) {
        const WidthTable table = random.table();
        const auto out = written(format->write, table);
        const auto back = table_in(format->read, out.text);
        ASSERT_EQ(back.series, table.series) << out.text;
        if (std::string(GetParam()) != ".csv") {
            ASSERT_EQ(back.headers, table.headers) << out.text;
        }
        ASSERT_EQ(written(format->write, back).text, out.text);
    }
}

TEST_P(ThereAndBack, ACutFileIsReadOrRefusedAndNeverCrashes) {
    const unsigned seed = std::random_device{}();
    SCOPED_TRACE("seed " + std::to_string(seed));
    RandomTables random(seed);
    const SeriesFormat* format = series_format_of(std::string("x") + GetParam()).value();
    const std::string text = written(format->write, random.table()).text;
    for (int i = 0; i < 200; ++i) {
        std::string damaged = text.substr(0, static_cast<std::size_t>(random.within(0, static_cast<int>(text.size()))));
        if (!damaged.empty()) {
            damaged[static_cast<std::size_t>(random.within(0, static_cast<int>(damaged.size()) - 1))] =
                static_cast<char>(random.within(1, 255));
        }
        const auto table = read_with(format->read, damaged);
        if (!table) {
            EXPECT_FALSE(table.error().what.empty() || table.error().remedy.empty());
        }
    }
}

INSTANTIATE_TEST_SUITE_P(AllFormats, ThereAndBack, testing::Values(".rwl", ".txt", ".csv", ".json"),
                         [](const auto& tested) { return std::string(tested.param).substr(1); });

TEST(ThereAndBackDecadal, KeepsCommentsAndGapsAtTheEnds) {
    WidthTable table;
    table.series = {series("A", 1985, {gap, 1.5, 0.25, gap}, Unit::HundredthMm), series("B", -1005, {0.1, gap, 0.2})};
    table.series[0].comments = {{Year(1985), "a note"}};
    const auto text = written(series_formats()[0].write, table).text;
    EXPECT_EQ(table_in(series_formats()[0].read, text).series, table.series);
}

} // namespace
} // namespace pithward
