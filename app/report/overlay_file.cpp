#include "app/report/overlay_file.h"

#include "app/picture/scan_picture.h"
#include "app/report/offscreen_gui.h"
#include "app/report/overlay.h"
#include "libcore/formats/whole_file.h"

namespace pithward::report {

Outcome<void> write_overlay(const std::filesystem::path& file, bool force, const ScanFile& scan,
                            const std::string& scan_name, std::span<const Reading> readings,
                            std::span<const RingSeries> series, const Work& work) {
    const OffscreenGui gui;
    const QSize size(scan.header().width, scan.header().height);
    return picture::scan_picture(scan, overlay_side, work)
        .and_then([&](const QImage& image) {
            return png_bytes(render_overlay({image, size, scan_name}, readings, series, overlay_side));
        })
        .map_error([&](Fault fault) {
            fault.where = fault.where.empty() ? file.string() : fault.where;
            return fault;
        })
        .and_then([&](const std::string& bytes) {
            return write_whole_file(file, force, [&](std::ostream& out) -> Outcome<void> {
                out.write(bytes.data(), std::ssize(bytes));
                return {};
            });
        });
}

} // namespace pithward::report
