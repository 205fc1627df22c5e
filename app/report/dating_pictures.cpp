#include "app/report/dating_pictures.h"

#include "app/picture/dating/chronology_sheet.h"
#include "app/picture/dating/climate_sheet.h"
#include "app/picture/dating/crossdate_sheets.h"
#include "app/report/offscreen_gui.h"
#include "app/report/sheet_file.h"

namespace pithward::report {

namespace {

Outcome<std::string> bytes_of(const picture::Sheet& sheet, const std::string& file) {
    return sheet_format_of(file).and_then([&](const SheetFormat* format) {
        return format->bytes(sheet).map_error([&](Fault fault) {
            fault.where = file;
            return fault;
        });
    });
}

} // namespace

Outcome<void> check_picture_name(const std::string& file) {
    return sheet_format_of(file).map([](const SheetFormat* /*format*/) {});
}

Outcome<std::string> series_picture(const dating::CrossdateResult& result, const std::string& file) {
    const OffscreenGui gui;
    return bytes_of(picture::series_sheet(result), file);
}

Outcome<std::string> agreement_picture(const dating::CrossdateResult& result, const std::string& file) {
    const OffscreenGui gui;
    return bytes_of(picture::agreement_sheet(result), file);
}

Outcome<std::string> chronology_picture(const dating::Chronology& chronology, const std::string& file) {
    const OffscreenGui gui;
    return bytes_of(picture::chronology_sheet(chronology), file);
}

Outcome<std::string> climate_picture(const results::ClimateResponse& response, const std::string& file) {
    const OffscreenGui gui;
    return bytes_of(picture::climate_sheet(response), file);
}

} // namespace pithward::report
