#include "app/bench/model/field_data.h"

#include "libcore/formats/field_sheet.h"

#include <QDir>
#include <QFileInfo>
#include <filesystem>
#include <fstream>

namespace pithward::bench {

namespace {

constexpr int most_sheets = 20;           ///< CSV files of a folder that are looked into.
constexpr qint64 largest_sheet = 4 << 20; ///< Bytes.

std::optional<FieldData> row_of(const std::vector<Site>& sites, const std::filesystem::path& scan) {
    for (const Site& site : sites) {
        for (const Tree& tree : site.trees) {
            for (const Core& core : tree.cores) {
                const bool named =
                    core.scan.empty() ? core.id == scan.stem().string() : core.scan == scan.filename().string();
                if (!named) {
                    continue;
                }
                FieldData data{{}, site, tree, core};
                data.site.trees.clear();
                data.tree.cores.clear();
                return data;
            }
        }
    }
    return std::nullopt;
}

} // namespace

std::optional<FieldData> field_data_for(const std::string& scan_path) {
    const std::filesystem::path scan(scan_path);
    const QDir folder(QString::fromStdString(scan.parent_path().string()));
    for (const QFileInfo& file : folder.entryInfoList({"*.csv"}, QDir::Files, QDir::Name).mid(0, most_sheets)) {
        if (file.size() > largest_sheet) {
            continue;
        }
        std::ifstream in(file.filePath().toStdString(), std::ios::binary);
        const auto sites = read_field_sheet(in);
        auto found = sites ? row_of(*sites, scan) : std::nullopt;
        if (found) {
            found->sheet = file.fileName().toStdString();
            return found;
        }
    }
    return std::nullopt;
}

} // namespace pithward::bench
