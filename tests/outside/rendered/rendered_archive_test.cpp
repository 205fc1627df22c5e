// Cores rendered with the widths of real trees, measured and compared with the archive's own numbers.
//
// The widths are series of the International Tree-Ring Data Bank (World Data Service for Paleoclimatology, NOAA), read
// from the decadal files beside the project (SOURCES.md there): two pines and a spruce of slow, middling and fast
// growth, from the studies co544, norw003 and deu353 as the bank numbers them. What a tree grew in a year is theirs;
// how the wood looks is the renderer's.
#include "libcore/formats/series_formats.h"
#include "libcore/measure/measure.h"
#include "tests/outside/archive/archive_support.h"
#include "tests/support/matching.h"
#include "tests/support/rendered_scan.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace pithward::test {
namespace {

struct Source {
    const char* study;
    const char* series;
    demo::Timber timber;
    std::uint64_t seed;
};

class RenderedArchive : public testing::TestWithParam<Source> {};

/// The series as the archive has it; nothing when the file is not there.
std::optional<WidthSeries> archived(const Source& source) {
    const auto file = archive_folder() / "sites" / (std::string(source.study) + ".rwl");
    if (!std::filesystem::exists(file)) {
        return std::nullopt;
    }
    const WidthTable table = read_series_file(file).value();
    const auto found = std::ranges::find(table.series, source.series, &WidthSeries::id);
    return found == table.series.end() ? std::nullopt : std::optional(*found);
}

/// A clear core with these widths, from bark to pith.
demo::Scene core_of(const WidthSeries& series, const Source& source) {
    demo::Scene scene;
    scene.name = source.study;
    scene.seed = source.seed;
    scene.timber = source.timber;
    scene.last_year = series.first_year + (static_cast<int>(series.widths.size()) - 1);
    for (const auto& width : series.widths) {
        scene.widths_mm.insert(scene.widths_mm.begin(), width->value());
    }
    return scene;
}

TEST_P(RenderedArchive, IsMeasuredAsTheArchiveHasIt) {
    const auto series = archived(GetParam());
    if (!series) {
        GTEST_SKIP() << "no archive files in " << archive_folder() << "; set PITHWARD_ARCHIVE";
    }
    ASSERT_TRUE(std::ranges::all_of(series->widths, [](const auto& width) { return width && width->value() >= 0.2; }));

    const TemporaryFolder folder;
    const RenderedScan core = rendered_scan(folder, core_of(*series, GetParam()), demo::Format::TiffLzw);
    const RingSeries measured = measure(read_along_truth(core)).value();

    std::map<int, double> by_year = year_widths(*series);
    std::vector<double> errors;
    for (const Ring& ring : measured.rings) {
        const auto there = by_year.find(ring.year.value_or(Year(-9999)).value());
        if (there != by_year.end() && ring.width) {
            errors.push_back(std::abs(ring.width->value() - there->second));
        }
    }
    std::printf("%s: %zu rings in the archive, %zu measured, %zu compared, median error %.4f mm\n", GetParam().study,
                by_year.size(), measured.rings.size(), errors.size(), median(errors));
    EXPECT_EQ(measured.rings.size(), by_year.size());
    EXPECT_EQ(errors.size(), by_year.size());
    EXPECT_LE(median(errors), 0.01);
}

INSTANTIATE_TEST_SUITE_P(Trees, RenderedArchive,
                         testing::Values(Source{"co544", "MOP091", demo::Timber::Pine, 41},
                                         Source{"norw003", "528191", demo::Timber::Pine, 42},
                                         Source{"deu353", "NGMA112K", demo::Timber::Spruce, 43}),
                         [](const auto& tested) { return std::string(tested.param.study); });

} // namespace
} // namespace pithward::test
