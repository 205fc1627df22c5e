// Measurement files of the International Tree-Ring Data Bank (World Data Service for Paleoclimatology, NOAA), each as
// the decadal file and as the bank's own template of the same study: two encodings of the same numbers, neither written
// by us. They stay outside the project; see SOURCES.md in their folder.
#include "libcore/formats/series_formats.h"
#include "tests/outside/archive/archive_support.h"

#include <gtest/gtest.h>

#include <cmath>
#include <iostream>
#include <set>
#include <sstream>

namespace pithward::test {
namespace {

constexpr double same_width_mm = 1e-9;

class Archive : public testing::Test {
protected:
    void SetUp() override {
        if (decadal_files("sites").empty()) {
            GTEST_SKIP() << "no archive files in " << archive_folder() << "; set PITHWARD_ARCHIVE";
        }
    }
};

const SeriesFormat& format(const char* extension) {
    return *series_format_of(std::string("x") + extension).value();
}

WidthTable through(const WidthTable& table, const char* extension) {
    std::stringstream stream;
    const auto written = format(extension).write(stream, table);
    EXPECT_TRUE(written.has_value()) << written.error().line();
    const auto back = format(extension).read(stream);
    EXPECT_TRUE(back.has_value()) << back.error().line();
    return back.value_or(WidthTable());
}

std::map<std::string, YearWidths> by_name(const WidthTable& table) {
    std::map<std::string, YearWidths> all;
    for (const WidthSeries& series : table.series) {
        all[series.id] = year_widths(series);
    }
    return all;
}

/// How a decadal file and its twin compare.
struct Comparison {
    int equal = 0;
    int gap_for_zero = 0; ///< The file has a negative code, or breaks off and goes on; the twin has 0.
    int different = 0;
    bool same_series = true;
};

Comparison compare(const std::map<std::string, YearWidths>& file, const std::map<std::string, YearWidths>& twin) {
    Comparison result;
    std::set<std::string> names;
    for (const auto* table : {&file, &twin}) {
        for (const auto& [name, widths] : *table) {
            names.insert(name);
        }
    }
    for (const std::string& name : names) {
        if (!file.contains(name) || !twin.contains(name)) {
            result.same_series = false;
            continue;
        }
        const YearWidths& ours = file.at(name);
        const YearWidths& theirs = twin.at(name);
        for (const auto& [year, width] : ours) {
            const auto found = theirs.find(year);
            const bool same = found != theirs.end() && std::abs(found->second - width) < same_width_mm;
            ++(same ? result.equal : result.different);
        }
        for (const auto& [year, width] : theirs) {
            if (!ours.contains(year)) {
                ++(width == 0.0 ? result.gap_for_zero : result.different);
            }
        }
    }
    return result;
}

bool agrees(const Comparison& result) {
    return result.different == 0 && result.same_series;
}

/// A twin that gives raw steps, in mm by the unit of each series of the decadal file.
std::map<std::string, YearWidths> in_mm(std::map<std::string, YearWidths> twin, const WidthTable& table) {
    for (const WidthSeries& series : table.series) {
        for (auto& [year, width] : twin[series.id]) {
            width /= series.unit == WidthSeries::Unit::HundredthMm ? 100.0 : 1000.0;
        }
    }
    return twin;
}

TEST_F(Archive, EveryDecadalFileHasTheWidthsAndYearsOfItsTwin) {
    int equal = 0;
    int files = 0;
    for (const auto& file : decadal_files("sites")) {
        SCOPED_TRACE(file.filename());
        const auto table = read_series_file(file);
        ASSERT_TRUE(table.has_value()) << table.error().line();
        const Comparison result = compare(by_name(*table), plain_table(twin_of(file)));
        EXPECT_TRUE(result.same_series);
        EXPECT_EQ(result.different, 0);
        if (result.gap_for_zero > 0) {
            std::cout << "exception 'gap for zero': " << file.filename().string() << ", " << result.gap_for_zero
                      << " years\n";
        }
        equal += result.equal;
        ++files;
    }
    std::cout << files << " files, " << equal << " widths equal\n";
}

TEST_F(Archive, OurTemplateReaderReadsTheTwinsAsTheyStand) {
    for (const auto& file : decadal_files("sites")) {
        SCOPED_TRACE(file.filename());
        const auto table = read_series_file(twin_of(file));
        ASSERT_TRUE(table.has_value()) << table.error().line();
        const Comparison result = compare(by_name(*table), plain_table(twin_of(file)));
        EXPECT_TRUE(result.same_series);
        EXPECT_EQ(result.different + result.gap_for_zero, 0);
    }
}

TEST_F(Archive, EveryFileGoesThereAndBackWithoutLoss) {
    for (const auto& file : decadal_files("sites")) {
        SCOPED_TRACE(file.filename());
        const auto table = read_series_file(file);
        ASSERT_TRUE(table.has_value()) << table.error().line();
        EXPECT_EQ(through(*table, ".rwl").headers, table->headers);
        EXPECT_EQ(through(*table, ".rwl").series, table->series);
        EXPECT_EQ(through(*table, ".json").series, table->series);
        for (const char* extension : {".txt", ".csv"}) {
            EXPECT_EQ(by_name(through(*table, extension)), by_name(*table)) << extension;
        }
    }
}

TEST_F(Archive, DifficultFilesAreReadOrRefusedWithOneClearLine) {
    int equal = 0;
    int raw_twin = 0;
    int other_twin = 0;
    int refused = 0;
    for (const auto& file : decadal_files("difficult")) {
        SCOPED_TRACE(file.filename());
        const auto table = read_series_file(file);
        std::cout << file.filename().string() << ": ";
        if (!table) {
            ++refused;
            std::cout << "refused\n";
            const std::string line = table.error().line();
            EXPECT_NE(line.find(", line "), std::string::npos) << line;
            EXPECT_FALSE(table.error().what.empty() || table.error().remedy.empty()) << line;
            continue;
        }
        const auto twin = plain_table(twin_of(file));
        const bool same = agrees(compare(by_name(*table), twin));
        const bool raw = !same && agrees(compare(by_name(*table), in_mm(twin, *table)));
        ++(same ? equal : raw ? raw_twin : other_twin);
        std::cout << "read, " << table->remarks.size() << " remarks, twin "
                  << (same  ? "equal"
                      : raw ? "in raw steps"
                            : "differs")
                  << '\n';
        EXPECT_EQ(through(*table, ".rwl").headers, table->headers);
        EXPECT_EQ(by_name(through(*table, ".rwl")), by_name(*table));
        EXPECT_EQ(by_name(through(*table, ".txt")), by_name(*table));
        const auto twin_read = read_series_file(twin_of(file));
        EXPECT_TRUE(twin_read.has_value() || !twin_read.error().remedy.empty());
    }
    std::cout << equal << " equal to the twin, " << raw_twin << " with a twin in raw steps, " << other_twin
              << " with another twin, " << refused << " refused\n";
}

} // namespace
} // namespace pithward::test
