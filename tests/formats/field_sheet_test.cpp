#include "libcore/formats/field_sheet.h"
#include "tests/formats/series_support.h"

namespace pithward {
namespace {

using test::contains;

Outcome<std::vector<Site>> sheet(const std::string& text) {
    std::istringstream in(text);
    return read_field_sheet(in);
}

std::string refused(const std::string& text) {
    const auto sites = sheet(text);
    EXPECT_FALSE(sites.has_value()) << text;
    return sites ? "" : sites.error().line();
}

const std::string all_columns =
    "site,tree,core,species,wood,date_cored,status,dbh_cm,bark_mm,core_height_cm,azimuth_deg,lean_azimuth_deg,lean_deg,"
    "slope_aspect_deg,borer_mm,outer,pith,pieces,scan,latitude,longitude,elevation_m,collector,notes";

TEST(FieldSheet, EveryColumnIsRead) {
    const auto sites =
        sheet(all_columns + "\nHill,T01,T01A,PISY,conifer,2024-06-30,living,31.5,12,130,90,180,5,270,5.15,"
                            "complete,near,2,t01a.tif,46.5,-7.25,1200,A. Person,\"split, glued\"\n");
    ASSERT_TRUE(sites.has_value()) << sites.error().line();
    const Site& site = sites->at(0);
    EXPECT_EQ(site.id, "Hill");
    EXPECT_EQ(site.latitude, 46.5);
    EXPECT_EQ(site.longitude, -7.25);
    EXPECT_EQ(site.elevation_m, 1200.0);
    const Tree& tree = site.trees.at(0);
    EXPECT_EQ(tree.species, "PISY");
    EXPECT_EQ(tree.wood, WoodType::Conifer);
    EXPECT_EQ(tree.living, true);
    EXPECT_EQ(tree.dbh_cm, 31.5);
    EXPECT_EQ(tree.bark_mm, 12.0);
    EXPECT_EQ(tree.lean_azimuth_deg, 180.0);
    EXPECT_EQ(tree.lean_deg, 5.0);
    EXPECT_EQ(tree.slope_aspect_deg, 270.0);
    const Core& core = tree.cores.at(0);
    EXPECT_EQ(core.id, "T01A");
    EXPECT_EQ(core.date_cored, "2024-06-30");
    EXPECT_EQ(core.core_height_cm, 130.0);
    EXPECT_EQ(core.azimuth_deg, 90.0);
    EXPECT_EQ(core.borer_mm, 5.15);
    EXPECT_EQ(core.outer, OuterWood::Complete);
    EXPECT_EQ(core.pith, FieldPith::Near);
    EXPECT_EQ(core.pieces, 2);
    EXPECT_EQ(core.scan, "t01a.tif");
    EXPECT_EQ(core.collector, "A. Person");
    EXPECT_EQ(core.notes, "split, glued");
}

TEST(FieldSheet, ColumnsStandInAnyOrderAndUnknownOnesAreKept) {
    const auto sites = sheet("Core,weather,TREE,site\nC1,rain,T1,S\nC2,,T1,S\nC3,sun,T2,S\nC1,,T1,other\n");
    ASSERT_TRUE(sites.has_value()) << sites.error().line();
    ASSERT_EQ(sites->size(), 2U);
    ASSERT_EQ(sites->at(0).trees.size(), 2U);
    ASSERT_EQ(sites->at(0).trees[0].cores.size(), 2U);
    EXPECT_EQ(sites->at(0).trees[0].cores[0].others, (std::map<std::string, std::string>{{"weather", "rain"}}));
    EXPECT_TRUE(sites->at(0).trees[0].cores[1].others.empty());
    EXPECT_EQ(sites->at(0).trees[0].cores[1].outer, OuterWood::Unknown);
}

TEST(FieldSheet, IsReadAsSpreadsheetsReallyWriteIt) {
    for (const std::string text :
         {"\xEF\xBB\xBFsite;tree;core;dbh_cm;notes\r\nS;T;C;31,5;\"two\nlines; here\"\r\n;;;;\r\n",
          "site\ttree\tcore\tdbh_cm\tnotes\nS\tT\tC\t31.5\t\"two\nlines; here\"\n",
          "site,tree,core,dbh_cm,notes,\n S ,T,C,\"31,5\",\"two\nlines; here\",\n"}) {
        const auto sites = sheet(text);
        ASSERT_TRUE(sites.has_value()) << sites.error().line();
        EXPECT_EQ(sites->at(0).id, "S");
        EXPECT_EQ(sites->at(0).trees.at(0).dbh_cm, 31.5);
        EXPECT_EQ(sites->at(0).trees[0].cores.at(0).notes, "two\nlines; here");
    }
}

TEST(FieldSheet, DatesMayBeAYearOrAYearAndMonth) {
    for (const std::string date : {"2024", "2024-06", "2024-02-29"}) {
        EXPECT_TRUE(sheet("site,tree,core,date_cored\nS,T,C," + date + "\n").has_value()) << date;
    }
    for (const std::string date :
         {"24", "2024-13", "2023-02-29", "30.06.2024", "2024/06/30", "2024-6-3", "+024-06-30"}) {
        EXPECT_TRUE(
            contains(refused("site,tree,core,date_cored\nS,T,C," + date + "\n"), "line 2, column 7: date_cored"))
            << date;
    }
}

TEST(FieldSheet, RowsOfOneTreeCompleteEachOther) {
    const auto sites = sheet("site,tree,core,dbh_cm,status\nS,T,A,,dead\nS,T,B,31.50,\nS,T,C,31.5,Dead\n");
    ASSERT_TRUE(sites.has_value()) << sites.error().line();
    EXPECT_EQ(sites->at(0).trees.at(0).dbh_cm, 31.5);
    EXPECT_EQ(sites->at(0).trees[0].living, false);
}

TEST(FieldSheet, BadInputIsRefusedWithLineAndColumn) {
    const std::string head = "site,tree,core";
    const std::pair<std::string, const char*> all[] = {
        {"", "no core"},
        {head + "\n", "no core"},
        {"site,tree\nS,T\n", "line 1, column 1: the header line has no column core"},
        {head + ",Tree\nS,T,C,T\n", "line 1, column 16: column Tree is there twice"},
        {head + "\nS,,C\n", "line 2, column 1: this row has no tree"},
        {head + "\nS,T,C,more\n", "line 2, column 7: there is no column name above"},
        {head + "\nS,T,C\nS,T,C\n", "line 3, column 5: core C of site S is there twice"},
        {head + "\nS,T,\"C\nD\"\n", "line 2, column 5: core is 'C D'"},
        {head + ",wood\nS,T,C,birch\n", "it must be one of conifer, ring-porous, diffuse-porous"},
        {head + ",outer\nS,T,C,rotten\n", "line 2, column 7: outer is 'rotten'"},
        {head + ",dbh_cm\nS,T,C,thick\n", "line 2, column 7: dbh_cm is 'thick'"},
        {head + ",dbh_cm\nS,T,C,-5\n", "it must be a number from 0 to 2000"},
        {head + ",elevation_m\nS,T,C,\"1,234\"\n", "line 2, column 7: elevation_m is '1,234'"},
        {head + ",latitude\nS,T,C,91\n", "it must be a number from -90 to 90"},
        {head + ",azimuth_deg\nS,T,C,361\n", "line 2, column 7"},
        {head + ",pieces\nS,T,C,1.5\n", "line 2, column 7"},
        {head + ",dbh_cm\nS,T,A,30\nS,T,B,31\n", "line 3, column 7: dbh_cm is '31' here and '30' in an earlier row"},
        {head + ",latitude\nS,T,A,30\nS,U,B,31\n", "line 3, column 7: latitude is '31' here"},
    };
    for (const auto& [text, words] : all) {
        EXPECT_TRUE(contains(refused(text), words)) << refused(text) << " for\n" << text;
    }
}

Outcome<FieldSheet> rows_of(const std::string& text) {
    std::istringstream in(text);
    return read_field_sheet_rows(in);
}

std::vector<std::string> cores_of(const FieldSheet& sheet) {
    std::vector<std::string> ids;
    for (const Site& site : sheet.sites) {
        for (const Tree& tree : site.trees) {
            for (const Core& core : tree.cores) {
                ids.push_back(core.id);
            }
        }
    }
    return ids;
}

TEST(FieldSheet, EveryRowIsTakenOrNamedWithItsLineAndReason) {
    // A byte order mark, semicolons, decimal commas, Latin-1 bytes, and of each fault one row.
    const auto read = rows_of("\xEF\xBB\xBFsite;tree;core;dbh_cm;date_cored;notes\n"
                              "S;T1;A;31,5;2024-06;N\xE4he\n" // 2
                              "S;T1;B;thick;2024;\n"          // 3: text in a number column
                              "S;T1;C;;2024-02-30;\n"         // 4: an impossible date
                              "S;T1;A;;;\n"                   // 5: a core that is there twice
                              ";T2;D;;;\n"                    // 6: no site
                              "S;T1;E;30;;\n"                 // 7: says another thing of the tree
                              "S;T2;F;1,234;;;lost\n"         // 8: a field without a column
                              "\n;;;;;\n"                     // 9, 10: blank
                              "S;T2;G;12,5;;\n");             // 11
    ASSERT_TRUE(read.has_value()) << read.error().line();
    EXPECT_EQ(cores_of(*read), (std::vector<std::string>{"A", "G"}));
    EXPECT_EQ(read->sites[0].trees[0].dbh_cm, 31.5);
    EXPECT_EQ(read->sites[0].trees[0].cores[0].notes, "N\xC3\xA4he");
    EXPECT_EQ(read->sites[0].trees[1].dbh_cm, 12.5) << "a row that is left out tells nothing of its tree";
    std::vector<std::string> said;
    for (const Fault& fault : read->left_out) {
        said.push_back(fault.where + ": " + fault.what);
        EXPECT_FALSE(fault.remedy.empty());
    }
    EXPECT_EQ(said, (std::vector<std::string>{
                        "line 3, column 8: dbh_cm is 'thick'",
                        "line 4, column 9: date_cored is '2024-02-30'",
                        "line 5, column 6: core A of site S is there twice",
                        "line 6, column 1: this row has no site",
                        "line 7, column 8: dbh_cm is '30' here and '31.5' in an earlier row of the same tree",
                        "line 8, column 16: there is no column name above this field",
                    }));
}

TEST(FieldSheet, OfASheetOfBadRowsAloneEachIsNamed) {
    const auto read = rows_of("site,tree,core\nS,,A\nS,,B\n");
    ASSERT_TRUE(read.has_value());
    EXPECT_TRUE(read->sites.empty());
    ASSERT_EQ(read->left_out.size(), 2U);
    EXPECT_EQ(read->left_out.front().where, "line 2, column 1");
    EXPECT_EQ(read->left_out.back().where, "line 3, column 1");
    EXPECT_FALSE(rows_of("site,tree,core\nS,T,A\nS,T,\"B\n").has_value()) << "no row is known after an open quote";
}

TEST(FieldSheet, AThousandsMarkAndAnImpossibleYearAreNotGuessed) {
    const auto left_out = [](const std::string& row) {
        return rows_of("site;tree;core;elevation_m;latitude;date_cored\n" + row + "\n")->left_out.size();
    };
    EXPECT_EQ(left_out("S;T;A;1240;47,5;2024"), 0U);
    EXPECT_EQ(left_out("S;T;A;1.240;47,5;2024"), 1U) << "1.24 or 1240";
    EXPECT_EQ(left_out("S;T;A;1240;47.512;2024"), 0U) << "no latitude is 47512";
    EXPECT_EQ(left_out("S;T;A;1240;47,5;2999"), 1U);
    EXPECT_EQ(left_out("S;T;A;1240;47,5;0001-01-01"), 1U);
}

TEST(FieldSheet, WhatIsNoUtf8IsToldSo) {
    EXPECT_TRUE(rows_of("site,tree,core,notes\nS,T,A,\xE4\n")->as_latin1);
    EXPECT_FALSE(rows_of("site,tree,core,notes\nS,T,A,\xC3\xA4\n")->as_latin1);
}

TEST(FieldSheet, WhatIsWrittenIsReadBack) {
    const auto sites =
        sheet(all_columns + ",my own;\nHill,T01,T01A,PISY,conifer,2024-06-30,living,31.5,12,130,90,180,5,"
                            "270,5.15,complete,near,2,t01a.tif,46.5,-7.25,1200,A. Person,\"a \"\"b\"\",\nc "
                            "\",x\nHill,T02,T02A,,,,dead,,,,,,,,,,,,,,,,,,\n");
    ASSERT_TRUE(sites.has_value()) << sites.error().line();
    std::ostringstream out;
    ASSERT_TRUE(write_field_sheet(out, *sites).has_value());
    const auto back = sheet(out.str());
    ASSERT_TRUE(back.has_value()) << back.error().line() << "\n" << out.str();
    EXPECT_EQ(*back, *sites);
}

} // namespace
} // namespace pithward
