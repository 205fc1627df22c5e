#include "libcore/record/scan_entry.h"

#include <QCryptographicHash>
#include <atomic>
#include <fstream>

namespace pithward::record {

Outcome<ScanEntry> scan_entry(const std::filesystem::path& file, std::string path, const Work& work) {
    constexpr std::size_t block_bytes = std::size_t{1} << 20U;
    std::ifstream in(file, std::ios::binary);
    std::vector<char> block(block_bytes);
    QCryptographicHash sum(QCryptographicHash::Sha256);
    ScanEntry entry{std::move(path), 0, {}};
    while (in && !work.stopped()) {
        in.read(block.data(), static_cast<std::streamsize>(block.size()));
        sum.addData(QByteArrayView(block.data(), in.gcount()));
        entry.bytes += in.gcount();
    }
    if (work.stopped()) {
        return fail(file.string(), "the checksum was stopped", "compute it again");
    }
    if (!in.eof()) {
        return fail(file.string(), "the scan can't be read", "check the file and its permissions");
    }
    entry.sha256 = sum.result().toHex().toStdString();
    return entry;
}

Outcome<std::vector<ScanEntry>> scan_entries(std::span<const ScanToSum> files, const Work& work) {
    std::vector<Outcome<ScanEntry>> computed(files.size());
    std::atomic<int> done = 0;
    work.share_out(static_cast<int>(files.size()), [&](int index) {
        const auto k = static_cast<std::size_t>(index);
        computed[k] = scan_entry(files[k].file, files[k].path, work);
        work.report(static_cast<double>(++done) / static_cast<double>(files.size()));
    });
    std::vector<ScanEntry> entries;
    entries.reserve(files.size());
    for (Outcome<ScanEntry>& one : computed) {
        if (!one) {
            return tl::unexpected(std::move(one.error()));
        }
        entries.push_back(std::move(*one));
    }
    return entries;
}

} // namespace pithward::record
