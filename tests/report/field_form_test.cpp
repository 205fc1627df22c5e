// What is taken along to the trees, as pdftotext reads it.
#include "app/report/labels/field_form.h"
#include "app/report/labels/field_page.h"
#include "app/report/paper/pdf_writer.h"
#include "tests/report/text_of.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace pithward::report {
namespace {

formats::SheetRow cored(const std::string& site, const std::string& core) {
    formats::SheetRow one;
    one.site.id = site;
    one.tree.id = "T" + core;
    one.core.id = core;
    return one;
}

std::ptrdiff_t pages_of(const std::string& text) {
    return std::count(text.begin(), text.end(), '\f');
}

TEST(FieldForm, HoldsWhatIsKnownAndRoomForMore) {
    std::vector<formats::SheetRow> cores;
    cores.reserve(16);
    for (int k = 0; k < 15; ++k) {
        cores.push_back(cored("Hill", "H" + std::to_string(100 + k)));
    }
    cores.push_back(cored("Vale", "V1"));
    cores[0].tree.species = "Quercus petraea";
    cores[0].tree.dbh_cm = 25.5;
    cores[0].core.azimuth_deg = 271.0;
    cores[0].core.outer = OuterWood::Lost;
    cores[0].core.pith = FieldPith::Near;
    cores[0].core.notes = "knot at 40 mm";
    const auto pdf = field_form(cores);
    ASSERT_TRUE(pdf);
    const auto text = test::text_of_pdf(*pdf);
    if (!text) {
        GTEST_SKIP() << "pdftotext is not on this machine";
    }
    EXPECT_EQ(pages_of(*text), 3) << "Hill, empty rows for it, since 15 of 18 are full, and Vale";
    for (const formats::SheetRow& core : cores) {
        EXPECT_NE(text->find(core.core.id), std::string::npos) << core.core.id;
    }
    const std::string row = text->substr(text->find("TH100"), 250);
    const std::string first = row.substr(0, row.find('\n'));
    for (const char* known : {"H100", "Quercus petraea", "25.5", "271", "lost", "near", "knot at 40 mm"}) {
        EXPECT_NE(first.find(known), std::string::npos) << known << " in " << first;
    }
    EXPECT_EQ(text->find("Vale"), text->rfind("Vale"));
    EXPECT_GT(text->find("V1"), text->find("Vale"));
}

TEST(FieldForm, WithoutCoresIsAnEmptyPage) {
    const auto pdf = field_form({});
    ASSERT_TRUE(pdf);
    const auto text = test::text_of_pdf(*pdf);
    if (!text) {
        GTEST_SKIP() << "pdftotext is not on this machine";
    }
    EXPECT_EQ(pages_of(*text), 1);
    for (const char* title : {"tree", "core", "species", "date", "dbh", "bark", "height", "azimuth", "lean", "slope",
                              "aspect", "outer", "pith", "pieces", "notes", "collector"}) {
        EXPECT_NE(text->find(title), std::string::npos) << title;
    }
}

TEST(FieldPage, IsOnePageWithTheCautions) {
    const auto pdf = pdf_bytes_of(field_page());
    ASSERT_TRUE(pdf);
    const auto text = test::text_of_pdf(*pdf);
    if (!text) {
        GTEST_SKIP() << "pdftotext is not on this machine";
    }
    EXPECT_EQ(pages_of(*text), 1);
    const std::string dense = test::without_blanks(*text);
    for (const char* words :
         {"squaretothelean", "alongthecontour", "compressionwoodliesontheside", "tensionwoodontheupperside",
          "Halfthestem'sdiameter", "Coringwoundsthetree", "Cleantheborer", "Localrules", "licensedpractice"}) {
        EXPECT_NE(dense.find(words), std::string::npos) << words;
    }
}

} // namespace
} // namespace pithward::report
