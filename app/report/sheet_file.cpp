#include "app/report/sheet_file.h"

#include "app/report/overlay.h"

#include <QBuffer>
#include <QFileInfo>
#include <QImage>
#include <QPainter>
#include <QPdfWriter>
#include <QSvgGenerator>
#include <algorithm>
#include <array>

namespace pithward::report {

namespace {

using picture::Sheet;
using picture::SheetPage;

constexpr double points_an_inch = 72.0;
constexpr double foot = 16.0; ///< Below the last row.

/// All rows as one page.
SheetPage whole(const Sheet& sheet) {
    return {0, sheet.rows.size(), sheet.height() + foot};
}

std::string svg_of_page(const Sheet& sheet, const SheetPage& page) {
    QBuffer buffer;
    QSvgGenerator svg;
    svg.setOutputDevice(&buffer);
    svg.setResolution(static_cast<int>(points_an_inch));
    svg.setSize(QSize(qCeil(sheet.width), qCeil(page.height)));
    svg.setViewBox(QRectF(0.0, 0.0, sheet.width, page.height));
    svg.setTitle(sheet.title);
    svg.setDescription(QStringLiteral("Made by Pithward"));
    QPainter painter(&svg);
    painter.fillRect(QRectF(0.0, 0.0, sheet.width, page.height), Qt::white);
    paint_page(painter, sheet, page);
    painter.end();
    return buffer.data().toStdString();
}

Outcome<std::string> svg_bytes(const Sheet& sheet) {
    return svg_of_page(sheet, whole(sheet));
}

Outcome<std::string> png_of_sheet(const Sheet& sheet) {
    constexpr double pixels_a_point = 2.0;
    constexpr double most_pixels = 32'000.0;
    constexpr double least_pixels_a_point = 1.0;
    const SheetPage page = whole(sheet);
    const double side = std::max(sheet.width, page.height);
    const double scale = std::min(pixels_a_point, most_pixels / side);
    if (scale < least_pixels_a_point) {
        return fail("", "there are too many series for one PNG", "write a .pdf or an .svg");
    }
    QImage image(qCeil(sheet.width * scale), qCeil(page.height * scale), QImage::Format_RGB32);
    if (image.isNull()) {
        return fail("", "the picture is too large for the memory", "write a .pdf or an .svg");
    }
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(scale, scale);
    paint_page(painter, sheet, page);
    painter.end();
    return png_bytes(image);
}

/// Pages as broad as the sheet, and as high as an A4 sheet on its side would be at that breadth.
Outcome<std::string> pdf_bytes(const Sheet& sheet) {
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    constexpr double height_of_breadth = 210.0 / 297.0;
    constexpr double highest = 1200.0; // Of a very broad sheet.
    const double height = std::max(420.0, std::min(highest, sheet.width * height_of_breadth));
    const auto pages = pages_of(sheet, height - foot);
    double highest_page = height;
    for (const SheetPage& page : pages) {
        highest_page = std::max(highest_page, page.height + foot);
    }
    QPdfWriter pdf(&buffer);
    pdf.setCreator(QStringLiteral("Pithward"));
    pdf.setTitle(sheet.title);
    pdf.setResolution(static_cast<int>(10.0 * points_an_inch));
    pdf.setPageSize(QPageSize(QSizeF(sheet.width, highest_page), QPageSize::Point, {}, QPageSize::ExactMatch));
    pdf.setPageMargins(QMarginsF(0.0, 0.0, 0.0, 0.0));
    QPainter painter(&pdf);
    painter.scale(10.0, 10.0);
    for (std::size_t k = 0; k < pages.size(); ++k) {
        if (k > 0) {
            pdf.newPage();
        }
        paint_page(painter, sheet, pages[k]);
    }
    painter.end();
    return buffer.data().toStdString();
}

} // namespace

Outcome<const SheetFormat*> sheet_format_of(const std::string& file) {
    static constexpr std::array all{SheetFormat{".svg", svg_bytes}, SheetFormat{".png", png_of_sheet},
                                    SheetFormat{".pdf", pdf_bytes}};
    const std::string ending = "." + QFileInfo(QString::fromStdString(file)).suffix().toLower().toStdString();
    const auto* const found = std::ranges::find(all, ending, &SheetFormat::extension);
    if (found == all.end()) {
        return fail(file, "its ending names no format of a picture", "use one of .svg, .png, .pdf");
    }
    return found;
}

std::vector<std::string> sheet_svgs(const Sheet& sheet, double greatest_height) {
    std::vector<std::string> pictures;
    for (SheetPage page : pages_of(sheet, greatest_height - foot)) {
        page.height += foot;
        pictures.push_back(svg_of_page(sheet, page));
    }
    return pictures;
}

} // namespace pithward::report
