// Labels as others read them: their codes by a reader of codes, off the printed page, and their words by pdftotext.
#include "app/report/labels/code_picture.h"
#include "app/report/labels/fitted_text.h"
#include "app/report/labels/label_sheet.h"
#include "libcore/field/core_code.h"
#include "libimaging/code/code_reader.h"
#include "tests/report/text_of.h"
#include "tests/support/temporary_folder.h"

#include <ZXing/ReadBarcode.h>
#include <gtest/gtest.h>

#include <QFontMetricsF>
#include <QImage>
#include <algorithm>
#include <cstdlib>
#include <set>

namespace pithward::report {
namespace {

using formats::SheetRow;

SheetRow labelled(const std::string& site, const std::string& tree, const std::string& core) {
    SheetRow one;
    one.site.id = site;
    one.tree.id = tree;
    one.core.id = core;
    return one;
}

const std::string hebrew = "\xD7\xA2\xD7\xA5-12";
const std::string umlauts = "M\xC3\xBC"
                            "hl\xC3\xB6"
                            "d";

/// The texts of all codes on the first page of a PDF, printed at 300 dots an inch.
std::set<std::string> codes_on(const std::string& pdf) {
    const test::TemporaryFolder folder;
    const std::string file = folder.write("a.pdf", pdf);
    std::set<std::string> texts;
    if (std::system(("pdftoppm -r 300 -gray -singlefile -png '" + file + "' '" + folder.file("a") + "'").c_str()) !=
        0) {
        return texts;
    }
    const QImage page = QImage(QString::fromStdString(folder.file("a.png"))).convertToFormat(QImage::Format_Grayscale8);
    const ZXing::ImageView view(page.constBits(), page.width(), page.height(), ZXing::ImageFormat::Lum,
                                static_cast<int>(page.bytesPerLine()));
    for (const ZXing::Result& one : ZXing::ReadBarcodes(view)) {
        EXPECT_EQ(one.format(), ZXing::BarcodeFormat::QRCode);
        texts.insert(one.text());
    }
    return texts;
}

bool can_read_pdf() {
    return std::system("command -v pdftoppm > /dev/null") == 0;
}

TEST(LabelSheet, TheCodesOnThePrintedPageGiveSiteAndCore) {
    if (!can_read_pdf()) {
        GTEST_SKIP() << "pdftoppm is not on this machine";
    }
    const std::string lengthy = std::string(140, 'q') + "0123456789";
    const std::vector<SheetRow> cores{labelled("HW", "HW01", "HW01A"), labelled(umlauts, "1", "1a"),
                                      labelled(hebrew, hebrew, hebrew), labelled("HW", "long", lengthy)};
    const auto sheet = label_sheet(cores);
    ASSERT_TRUE(sheet);
    EXPECT_TRUE(sheet->without_code.empty());
    EXPECT_EQ(codes_on(sheet->pdf),
              (std::set<std::string>{"HW/HW01A", umlauts + "/1a", hebrew + "/" + hebrew, "HW/" + lengthy}));
}

/// Codes with their places on a page, printed at a resolution and read as a scan is; of a part of the page in mm.
std::vector<CodeOnScan> scanned_codes(const std::string& pdf, int page, int dpi, QRect part_mm) {
    const test::TemporaryFolder folder;
    const std::string file = folder.write("a.pdf", pdf);
    const auto px = [dpi](int mm) { return std::to_string(static_cast<int>(mm * dpi / 25.4)); };
    const std::string command = "pdftoppm -r " + std::to_string(dpi) + " -f " + std::to_string(page) + " -l " +
                                std::to_string(page) + " -x " + px(part_mm.x()) + " -y " + px(part_mm.y()) + " -W " +
                                px(part_mm.width()) + " -H " + px(part_mm.height()) + " -gray -singlefile -png '" +
                                file + "' '" + folder.file("a") + "'";
    EXPECT_EQ(std::system(command.c_str()), 0);
    const auto scan = ScanFile::open(folder.file("a.png"));
    EXPECT_TRUE(scan.has_value());
    return scan.and_then([](const ScanFile& opened) { return read_codes(opened); }).value_or(std::vector<CodeOnScan>{});
}

TEST(LabelSheet, OurOwnReaderGivesTheNamesBack) {
    if (!can_read_pdf()) {
        GTEST_SKIP() << "pdftoppm is not on this machine";
    }
    const std::vector<SheetRow> cores{labelled("HW", "HW01", "HW01A"), labelled("Hill/North", "1", "1/2"),
                                      labelled(hebrew, hebrew, umlauts + "/" + hebrew), labelled("50%", "t", "%2F")};
    const auto sheet = label_sheet(cores);
    ASSERT_TRUE(sheet);
    std::vector<std::optional<field::CodeNames>> names;
    for (const CodeOnScan& code : scanned_codes(sheet->pdf, 1, 300, {0, 0, 210, 297})) {
        names.push_back(field::names_in_code(code.text));
    }
    for (const SheetRow& core : cores) {
        EXPECT_EQ(std::ranges::count(names, field::CodeNames{core.site.id, core.core.id}), 1) << core.core.id;
    }
    EXPECT_EQ(names.size(), cores.size());
    const auto close = scanned_codes(sheet->pdf, 1, 1200, {0, 0, 60, 37});
    ASSERT_EQ(close.size(), 1U) << "the first label at 1200 dots an inch";
    EXPECT_EQ(close[0].text, "HW/HW01A");
}

TEST(LabelSheet, AUsedSheetIsBegunWhereItsLabelsAre) {
    constexpr int count = 4;
    std::vector<SheetRow> cores;
    cores.reserve(count);
    for (int k = 0; k < count; ++k) {
        cores.push_back(labelled("HW", "1", "C" + std::to_string(k)));
    }
    EXPECT_FALSE(label_sheet(cores, 0));
    EXPECT_FALSE(label_sheet(cores, 25));
    const auto sheet = label_sheet(cores, 23); // the middle and the right one of the last row
    ASSERT_TRUE(sheet);
    if (!can_read_pdf()) {
        GTEST_SKIP() << "pdftoppm is not on this machine";
    }
    const auto first = scanned_codes(sheet->pdf, 1, 300, {0, 0, 210, 297});
    ASSERT_EQ(first.size(), 2U);
    constexpr double px_per_mm = 300.0 / 25.4;
    for (const CodeOnScan& code : first) {
        EXPECT_GT(code.at.y, 7 * 37.1 * px_per_mm);
        EXPECT_NEAR(code.at.x, (code.text == "HW/C0" ? 70.0 + 18.5 : 140.0 + 18.5) * px_per_mm, 3.0 * px_per_mm)
            << code.text;
    }
    const auto second = scanned_codes(sheet->pdf, 2, 300, {0, 0, 210, 297});
    ASSERT_EQ(second.size(), 2U);
    for (const CodeOnScan& code : second) {
        EXPECT_LT(code.at.y, 37.1 * px_per_mm) << "the next page is whole";
    }
}

TEST(LabelSheet, EveryIdentifierStandsInTheText) {
    std::vector<SheetRow> cores;
    cores.reserve(25);
    for (int k = 0; k < 25; ++k) {
        cores.push_back(labelled("Hill", "T" + std::to_string(100 + k), "C" + std::to_string(100 + k) + "a"));
    }
    cores.front().tree.species = "Quercus petraea";
    cores.front().core.date_cored = "2024-06-30";
    const auto sheet = label_sheet(cores);
    ASSERT_TRUE(sheet);
    const auto text = test::text_of_pdf(sheet->pdf);
    if (!text) {
        GTEST_SKIP() << "pdftotext is not on this machine";
    }
    EXPECT_EQ(std::count(text->begin(), text->end(), '\f'), 2) << "24 on the first page, one on the second";
    for (const SheetRow& one : cores) {
        EXPECT_NE(text->find(one.core.id), std::string::npos) << one.core.id;
        EXPECT_NE(text->find(one.tree.id), std::string::npos) << one.tree.id;
    }
    EXPECT_NE(text->find("Quercus petraea"), std::string::npos);
    EXPECT_NE(text->find("2024-06-30"), std::string::npos);
    EXPECT_GT(text->find("C124a"), text->find('\f'));
}

TEST(LabelSheet, WhatNoCodeCanHoldHasALabelWithoutOne) {
    const std::vector<SheetRow> cores{labelled("S", "t", std::string(400, 'x')), labelled("S", "t", "broken \xFF"),
                                      labelled("S", "t", "good")};
    const auto sheet = label_sheet(cores);
    ASSERT_TRUE(sheet);
    ASSERT_EQ(sheet->without_code.size(), 2U);
    EXPECT_TRUE(sheet->without_code.front().where.starts_with("xxxx"));
    EXPECT_LT(sheet->without_code.front().where.size(), 80U) << "a line that can be read";
    if (can_read_pdf()) {
        EXPECT_EQ(codes_on(sheet->pdf), std::set<std::string>{"S/good"});
    }
    EXPECT_FALSE(code_of(""));
}

TEST(LabelSheet, NoCoreAndTooManyAreRefused) {
    EXPECT_FALSE(label_sheet({}));
    const std::vector<SheetRow> many(20'001, labelled("S", "t", "c"));
    const auto sheet = label_sheet(many);
    ASSERT_FALSE(sheet);
    EXPECT_NE(sheet.error().what.find("20,000"), std::string::npos);
}

TEST(FittedText, IsMadeSmallerThenLosesItsMiddleOnly) {
    const LetterSizes sizes{20.0, 8.0, true};
    const FittedText brief = fitted("HW01A", 1000.0, sizes);
    const FittedText longer = fitted("HW01A-second-half", 1000.0, sizes);
    const FittedText longest = fitted("HW01A-" + std::string(200, 'm') + "-end7", 1000.0, sizes);
    EXPECT_EQ(brief.text, "HW01A");
    EXPECT_EQ(longer.text, "HW01A-second-half");
    EXPECT_LT(longer.font.pixelSize(), brief.font.pixelSize());
    EXPECT_TRUE(longest.text.startsWith("HW01A-") && longest.text.endsWith("-end7"));
    EXPECT_EQ(longest.text.count(QChar(0x2026)), 1);
    for (const FittedText& one : {brief, longer, longest}) {
        EXPECT_LE(QFontMetricsF(one.font).horizontalAdvance(one.text), 1000.0);
    }
}

} // namespace
} // namespace pithward::report
