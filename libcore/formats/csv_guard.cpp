#include "libcore/formats/csv_guard.h"

#include "libcore/formats/text_input.h"

#include <algorithm>

namespace pithward::formats {

namespace {

/// Apostrophes, any number of them, before what a spreadsheet would run. The apostrophes are looked through, so that a
/// text that looks guarded by itself gets one more and comes back as it was.
bool would_run(std::string_view text) {
    text.remove_prefix(std::min(text.find_first_not_of('\''), text.size()));
    return !text.empty() && std::string_view("=+-@\t\r").find(text.front()) != std::string_view::npos;
}

} // namespace

std::string guarded(std::string_view text) {
    std::string cell;
    if (would_run(text) && !decimal_number(text)) {
        cell = '\'';
    }
    return cell += text;
}

std::string_view unguarded(std::string_view cell) {
    return cell.starts_with('\'') && would_run(cell) ? cell.substr(1) : cell;
}

} // namespace pithward::formats
