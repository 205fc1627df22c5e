#include "app/report/overlay_file.h"

#include "app/picture/scan_picture.h"
#include "app/report/offscreen_gui.h"
#include "app/report/overlay.h"

namespace pithward::report {

Outcome<std::string> overlay_bytes(const ScanFile& scan, const std::string& scan_name,
                                   std::span<const Reading> readings, std::span<const RingSeries> series,
                                   const Work& work) {
    const OffscreenGui gui;
    const QSize size(scan.header().width, scan.header().height);
    return picture::scan_picture(scan, overlay_side, work)
        .and_then([&](const QImage& image) {
            return png_bytes(render_overlay({image, size, scan_name}, readings, series, overlay_side));
        })
        .map_error([&](Fault fault) {
            fault.where = fault.where.empty() ? scan.header().file : fault.where;
            return fault;
        });
}

} // namespace pithward::report
