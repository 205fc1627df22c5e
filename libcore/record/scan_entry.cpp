#include "libcore/record/project.h"

#include <QCryptographicHash>
#include <fstream>

namespace pithward::record {

Outcome<ScanEntry> scan_entry(const std::filesystem::path& file, std::string path) {
    constexpr std::size_t block_bytes = std::size_t{1} << 20U;
    std::ifstream in(file, std::ios::binary);
    std::vector<char> block(block_bytes);
    QCryptographicHash sum(QCryptographicHash::Sha256);
    ScanEntry entry{std::move(path), 0, {}};
    while (in) {
        in.read(block.data(), static_cast<std::streamsize>(block.size()));
        sum.addData(QByteArrayView(block.data(), in.gcount()));
        entry.bytes += in.gcount();
    }
    if (!in.eof()) {
        return fail(file.string(), "the scan can't be read", "check the file and its permissions");
    }
    entry.sha256 = sum.result().toHex().toStdString();
    return entry;
}

} // namespace pithward::record
