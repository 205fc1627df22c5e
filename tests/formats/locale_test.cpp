// Numbers in files don't follow the machine's language.
#include "libcore/formats/field_sheet.h"
#include "libcore/formats/series_formats.h"
#include "tests/formats/series_support.h"

#include <clocale>
#include <locale>

namespace pithward {
namespace {

using namespace test;

/// Decimal commas and points between thousands, as many countries write them.
class CommaPunctuation : public std::numpunct<char> {
    char do_decimal_point() const override { return ','; }
    char do_thousands_sep() const override { return '.'; }
    std::string do_grouping() const override { return "\3"; }
};

class CommaLocale : public testing::Test {
protected:
    CommaLocale()
        : before_(std::locale::global(std::locale(std::locale::classic(), new CommaPunctuation))) {
        std::setlocale(LC_ALL, "de_DE.UTF-8"); // Where the machine has it: C functions then write commas too.
    }
    ~CommaLocale() override {
        std::locale::global(before_);
        std::setlocale(LC_ALL, "C");
    }

private:
    std::locale before_;
};

TEST_F(CommaLocale, SeriesAreWrittenAndReadTheSame) {
    WidthTable table;
    table.series = {series("A", 1990, {1.234, gap, 0.0, 12.5})};
    for (const SeriesFormat& format : series_formats()) {
        const auto out = written(format.write, table);
        EXPECT_FALSE(contains(out.text, "1.990")) << out.text;
        EXPECT_FALSE(contains(out.text, "1,234") && !contains(out.text, "1,234,")) << out.text;
        EXPECT_EQ(table_in(format.read, out.text).series, table.series) << out.text;
    }
}

TEST_F(CommaLocale, FieldSheetsAreWrittenAndReadTheSame) {
    Site site{"S", 46.123456, -7.25, 1234.5, {Tree{"T", {}, {}, {}, 31.5, {}, {}, {}, {}, {Core{}}}}};
    site.trees[0].cores[0].id = "C";
    std::ostringstream out;
    ASSERT_TRUE(write_field_sheet(out, {site}).has_value());
    EXPECT_TRUE(contains(out.str(), "46.123456,-7.25,1234.5"));
    std::istringstream in(out.str());
    EXPECT_EQ(read_field_sheet(in).value(), std::vector<Site>{site});
}

} // namespace
} // namespace pithward
