#include "app/report/labels/printed_pages.h"

#include <QBuffer>
#include <QPdfWriter>

namespace pithward::report {

Outcome<std::string> printed_pages(const std::string& title, PaperTurn turn, std::size_t pages,
                                   const std::function<void(QPainter&, std::size_t page)>& paint) {
    constexpr double points_an_inch = 72.0;
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter pdf(&buffer);
    pdf.setCreator(QStringLiteral("Pithward"));
    pdf.setTitle(QString::fromStdString(title));
    pdf.setResolution(static_cast<int>(points_an_inch * page_unit));
    pdf.setPageSize(QPageSize(QPageSize::A4));
    pdf.setPageOrientation(turn == PaperTurn::Upright ? QPageLayout::Portrait : QPageLayout::Landscape);
    pdf.setPageMargins(QMarginsF(0.0, 0.0, 0.0, 0.0));
    QPainter painter;
    if (!painter.begin(&pdf)) {
        return fail("", "the PDF can't be begun", "report this");
    }
    for (std::size_t page = 0; page < pages; ++page) {
        if (page > 0) {
            pdf.newPage();
        }
        paint(painter, page);
    }
    painter.end();
    return buffer.data().toStdString();
}

} // namespace pithward::report
