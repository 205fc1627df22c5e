#include "app/bench/model/scan_files.h"

#include <QDir>
#include <QFileInfo>

namespace pithward::bench {

const QStringList& scan_patterns() {
    static const QStringList patterns{"*.tif", "*.tiff", "*.png", "*.jpg", "*.jpeg"};
    return patterns;
}

QStringList scan_files_in(const QStringList& paths) {
    QStringList files;
    for (const QString& path : paths) {
        if (!QFileInfo(path).isDir()) {
            files << path;
            continue;
        }
        const QDir folder(path);
        for (const QString& name : folder.entryList(scan_patterns(), QDir::Files, QDir::Name)) {
            files << folder.filePath(name);
        }
    }
    return files;
}

} // namespace pithward::bench
