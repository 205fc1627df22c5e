#include "app/report/labels/code_picture.h"

#include "libcore/field/core_code.h"

#include <ZXing/BarcodeFormat.h>
#include <ZXing/BitMatrix.h>
#include <ZXing/CharacterSet.h>
#include <ZXing/MultiFormatWriter.h>

#include <QString>
#include <exception>

namespace pithward::report {

namespace {

constexpr std::size_t most_code_bytes = 300;
constexpr int middle_correction = 4; ///< Of the library's 0 to 8: the standard's level M.

} // namespace

std::string code_text(const Site& site, const Core& core) {
    return field::core_code({site.id, core.id});
}

Outcome<CodePicture> code_of(const std::string& text) {
    if (text.empty() || text.size() > most_code_bytes) {
        return fail("",
                    text.empty() ? "there is nothing to put into a code" : "it is too long for a code that can be read",
                    "use up to 300 bytes for the names of site and core together");
    }
    if (QString::fromStdString(text).toStdString() != text) {
        return fail("", "it is no UTF-8, so no code can hold it", "give site and core another name");
    }
    try {
        const ZXing::BitMatrix squares = ZXing::MultiFormatWriter(ZXing::BarcodeFormat::QRCode)
                                             .setEncoding(ZXing::CharacterSet::UTF8)
                                             .setEccLevel(middle_correction)
                                             .setMargin(0)
                                             .encode(text, 0, 0);
        CodePicture code;
        code.side = squares.width();
        code.dark.reserve(static_cast<std::size_t>(code.side) * static_cast<std::size_t>(code.side));
        for (int y = 0; y < code.side; ++y) {
            for (int x = 0; x < code.side; ++x) {
                code.dark.push_back(squares.get(x, y));
            }
        }
        return code;
    } catch (const std::exception& error) { // The library says so what it can't encode.
        return fail("", std::string("no code can hold it (") + error.what() + ")", "give site and core another name");
    }
}

} // namespace pithward::report
