#include "libcore/record/project.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace pithward::record {

namespace {

QString json_text(const std::string& text) {
    return QString::fromStdString(text);
}

QJsonObject reading_object(const ReadingEntry& reading, const CoreEntry& core) {
    return {{"reading", static_cast<qint64>(reading.id.value)},
            {"accepted", core.accepted == reading.id},
            {"analyst", json_text(reading.analyst)},
            {"state", json_text(reading.state)},
            {"edits", static_cast<qint64>(reading.revision)},
            {"boundaries", reading.boundaries},
            {"looked_at", reading.looked_at},
            {"in_bulk", reading.in_bulk},
            {"findings", reading.findings},
            {"open_findings", reading.open_findings}};
}

} // namespace

std::string project_json(std::span<const CoreEntry> cores, std::span<const ReadingEntry> readings) {
    QJsonArray list;
    for (const CoreEntry& core : cores) {
        QJsonArray of_core;
        for (const ReadingEntry& reading : readings) {
            if (reading.core == core.id) {
                of_core.append(reading_object(reading, core));
            }
        }
        list.append(QJsonObject{{"site", json_text(core.site.id)},
                                {"tree", json_text(core.tree.id)},
                                {"core", json_text(core.core.id)},
                                {"scan", core.core.scan.empty() ? QJsonValue() : json_text(core.core.scan)},
                                {"readings", of_core}});
    }
    return QJsonDocument(QJsonObject{{"cores", list}}).toJson().toStdString();
}

} // namespace pithward::record
