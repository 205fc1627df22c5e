#include "libcore/record/scan_rows.h"

namespace pithward::record {

Outcome<void> insert_scan(const Connection& connection, const ScanEntry& scan) {
    return connection.change("INSERT INTO scan (path, bytes, sha256) VALUES (?, ?, ?)",
                             {to_sql(scan.path), to_sql(scan.bytes), to_sql(scan.sha256)});
}

Outcome<std::vector<ScanEntry>> read_scans(const Connection& connection) {
    auto rows = connection.run("SELECT path, bytes, sha256 FROM scan ORDER BY path");
    if (!rows) {
        return tl::unexpected(std::move(rows.error()));
    }
    std::vector<ScanEntry> scans;
    while (rows->next()) {
        scans.push_back({text_from(rows->value(0)), rows->value(1).toLongLong(), text_from(rows->value(2))});
    }
    return scans;
}

} // namespace pithward::record
