#include "libcore/record/scans_to_settle.h"

#include "libcore/field/scan_place.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>
#include <map>
#include <set>

namespace pithward::record {

namespace {

/// Scans on which readings lie: a path may go on on one that is no core's.
Outcome<std::set<std::string>> scans_of_readings(const Project& project) {
    std::set<std::string> scans;
    const auto readings = project.readings();
    if (!readings) {
        return tl::unexpected(readings.error());
    }
    for (const ReadingEntry& entry : *readings) {
        const auto reading = project.reading(entry.id);
        if (!reading) {
            return tl::unexpected(reading.error());
        }
        for (const Leg& leg : reading->path.legs) {
            scans.insert(leg.scan);
        }
    }
    return scans;
}

/// Whether each of a scan's cores is told apart from the others.
bool is_clear(const std::vector<CoreEntry>& cores) {
    std::set<std::string> places;
    for (const CoreEntry& core : cores) {
        const auto place = field::scan_place_of(core.core);
        if (!place || !places.insert(field::text_of(*place)).second) {
            return cores.size() == 1;
        }
    }
    return true;
}

QJsonObject named_core(const CoreEntry& core) {
    return {{"site", QString::fromStdString(core.site.id)}, {"core", QString::fromStdString(core.core.id)}};
}

QJsonArray listed_doubts(const std::vector<ScansToSettle::Doubt>& doubts, const QString& cores_key) {
    QJsonArray list;
    for (const ScansToSettle::Doubt& doubt : doubts) {
        QJsonArray cores;
        for (const CoreEntry& core : doubt.cores) {
            cores.append(named_core(core));
        }
        list.append(QJsonObject{{"scan", QString::fromStdString(doubt.scan)}, {cores_key, cores}});
    }
    return list;
}

} // namespace

Outcome<ScansToSettle> scans_to_settle(const Project& project) {
    const auto cores = project.cores();
    const auto scans = project.scans();
    if (!cores || !scans) {
        return tl::unexpected(cores ? scans.error() : cores.error());
    }
    std::set<std::string> known;
    for (const ScanEntry& scan : *scans) {
        known.insert(scan.path);
    }
    ScansToSettle settle;
    std::map<std::string, std::vector<CoreEntry>> users;
    for (const CoreEntry& core : *cores) {
        const std::string& scan = core.core.scan;
        std::error_code error;
        const bool there =
            !scan.empty() && (known.contains(scan) || std::filesystem::exists(project.folder() / scan, error));
        if (there) {
            users[scan].push_back(core);
        } else {
            settle.without_scan.push_back(core);
        }
    }
    for (const auto& [scan, of_scan] : users) {
        if (!is_clear(of_scan)) {
            settle.unclear.push_back({scan, of_scan});
        }
    }
    std::erase_if(known, [&](const std::string& scan) { return users.contains(scan); });
    const auto read = known.empty() ? std::set<std::string>() : scans_of_readings(project);
    if (!read) {
        return tl::unexpected(read.error());
    }
    for (const std::string& scan : known) {
        if (read->contains(scan)) {
            continue;
        }
        ScansToSettle::Doubt doubt{scan, {}};
        const std::string stem = std::filesystem::path(scan).stem().string();
        std::ranges::copy_if(settle.without_scan, std::back_inserter(doubt.cores),
                             [&](const CoreEntry& core) { return core.core.id == stem; });
        settle.without_core.push_back(std::move(doubt));
    }
    return settle;
}

std::string with_scans_to_settle(const std::string& project_json, const ScansToSettle& scans) {
    QJsonObject project = QJsonDocument::fromJson(QByteArray::fromStdString(project_json)).object();
    QJsonArray without_scan;
    for (const CoreEntry& core : scans.without_scan) {
        QJsonObject one = named_core(core);
        one["scan"] = core.core.scan.empty() ? QJsonValue() : QJsonValue(QString::fromStdString(core.core.scan));
        without_scan.append(one);
    }
    project["scans_to_settle"] = QJsonObject{{"cores_without_scan", without_scan},
                                             {"scans_without_core", listed_doubts(scans.without_core, "may_be")},
                                             {"unclear", listed_doubts(scans.unclear, "cores")}};
    return QJsonDocument(project).toJson().toStdString();
}

} // namespace pithward::record
