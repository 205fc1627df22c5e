#include "demo-scans/maker/growth.h"
#include "demo-scans/maker/site.h"
#include "libcore/formats/field_sheet.h"
#include "tests/demo_scans/scenes.h"

#include <cmath>
#include <map>
#include <set>
#include <sstream>

namespace pithward::demo {
namespace {

using Series = std::map<int, double>; ///< Logarithm of the width over a running mean of 31 years, by year.

Series detrended(const Scene& scene) {
    std::vector<PlannedRing> rings = plan_rings(scene);
    std::erase_if(rings, [](const PlannedRing& r) { return !r.on_core || !r.complete || r.width_mm <= 0.0; });
    Series series;
    const int count = static_cast<int>(rings.size());
    for (int i = 0; i < count; ++i) {
        double sum = 0.0;
        int held = 0;
        for (int j = std::max(0, i - 15); j <= std::min(count - 1, i + 15); ++j, ++held) {
            sum += rings[static_cast<std::size_t>(j)].width_mm;
        }
        series[rings[static_cast<std::size_t>(i)].year] =
            std::log(rings[static_cast<std::size_t>(i)].width_mm * held / sum);
    }
    return series;
}

double correlation(const Series& a, const Series& b) {
    double n = 0, sa = 0, sb = 0, saa = 0, sbb = 0, sab = 0;
    for (const auto& [year, x] : a) {
        if (const auto it = b.find(year); it != b.end()) {
            const double y = it->second;
            n += 1, sa += x, sb += y, saa += x * x, sbb += y * y, sab += x * y;
        }
    }
    return (n * sab - sa * sb) / std::sqrt((n * saa - sa * sa) * (n * sbb - sb * sb));
}

TEST(DemoSite, ConifersOfTheSiteAgreeAsRealOnesDo) {
    const std::vector<Order> orders = demo_site();
    double mean = 0.0;
    int pairs = 0;
    for (std::size_t i = 0; i < 12; ++i) {
        for (std::size_t j = i + 1; j < 12; ++j, ++pairs) {
            const double r = correlation(detrended(orders[i].scenes[0]), detrended(orders[j].scenes[0]));
            EXPECT_GT(r, 0.3) << orders[i].name << " and " << orders[j].name;
            EXPECT_LT(r, 0.9) << orders[i].name << " and " << orders[j].name;
            mean += r;
        }
    }
    EXPECT_GT(mean / pairs, 0.4);
    EXPECT_LT(mean / pairs, 0.7);
}

TEST(DemoSite, HasTwelveConiferCoresOfSixTreesAndTwoOfEachHardwood) {
    std::map<WoodType, int> cores;
    std::set<std::string> trees;
    for (const Order& order : demo_site()) {
        const Scene& scene = order.scenes.front();
        ++cores[wood_type(scene.timber)];
        EXPECT_LE(scene.name.size(), 8U);
        EXPECT_EQ(scene.dpi, 1200.0);
        if (wood_type(scene.timber) == WoodType::Conifer) {
            trees.insert(scene.name.substr(0, 4));
        }
    }
    EXPECT_EQ(cores[WoodType::Conifer], 12);
    EXPECT_EQ(cores[WoodType::RingPorous], 2);
    EXPECT_EQ(cores[WoodType::DiffusePorous], 2);
    EXPECT_EQ(trees.size(), 6U);
}

TEST(DemoSite, CoresOfATreeHaveOneAge) {
    std::map<std::string, std::set<int>> first_years;
    for (const Order& order : demo_site()) {
        first_years[order.name.substr(0, 4)].insert(plan_rings(order.scenes.front()).front().year);
    }
    for (const auto& [tree, years] : first_years) {
        EXPECT_EQ(years.size(), 1U) << tree;
    }
}

TEST(DemoSite, ItsFieldSheetIsReadBackAsItIs) {
    std::stringstream sheet;
    ASSERT_TRUE(write_field_sheet(sheet, {demo_field_sheet()}).has_value());
    const auto sites = read_field_sheet(sheet);
    ASSERT_TRUE(sites.has_value()) << sites.error().line();
    ASSERT_EQ(sites->size(), 1U);
    EXPECT_EQ(sites->front(), demo_field_sheet());
    std::size_t row = 0;
    const std::vector<Order> orders = demo_site();
    for (const Tree& tree : sites->front().trees) {
        for (const Core& core : tree.cores) {
            EXPECT_EQ(core.scan, orders[row].name + suffix(orders[row].format));
            ++row;
        }
    }
    EXPECT_EQ(row, orders.size());
}

} // namespace
} // namespace pithward::demo
