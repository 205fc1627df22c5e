#pragma once

#include <QStringList>

namespace pithward::bench {

/// File names that are taken for scans, as patterns.
[[nodiscard]] const QStringList& scan_patterns();

/// The files among the paths, and in place of each folder the scans that lie in it, by name.
[[nodiscard]] QStringList scan_files_in(const QStringList& paths);

} // namespace pithward::bench
