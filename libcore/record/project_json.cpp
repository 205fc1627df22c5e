#include "libcore/record/project.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>

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

QJsonValue mm_or_null(const std::optional<Millimetres>& length) {
    return length ? QJsonValue(length->value()) : QJsonValue();
}

QJsonArray places(const std::vector<PlacedBoundary>& boundaries) {
    QJsonArray list;
    for (const PlacedBoundary& one : boundaries) {
        list.append(QJsonObject{{"boundary", static_cast<qint64>(one.id.value)},
                                {"s_mm", one.s.value()},
                                {"year", one.year ? QJsonValue(one.year->value()) : QJsonValue()}});
    }
    return list;
}

QJsonObject comparison_object(const ReadingComparison& one) {
    const review::Comparison& both = one.comparison;
    return {{"reading", static_cast<qint64>(one.first.value)},
            {"with", static_cast<qint64>(one.second.value)},
            {"matched_boundaries", static_cast<qint64>(both.matched.size())},
            {"only_in_reading", places(one.only_first)},
            {"only_in_with", places(one.only_second)},
            {"agreeing_rings", both.agreeing_rings},
            {"share_agreeing", both.share_agreeing ? QJsonValue(*both.share_agreeing) : QJsonValue()},
            {"years_differ", both.years_differ},
            {"widths", both.widths},
            {"width_bias_mm", mm_or_null(both.bias)},
            {"width_sd_mm", mm_or_null(both.sd)},
            {"width_sd_of_one_mm", mm_or_null(both.sd_of_one)}};
}

QJsonValue age_or_null(std::span<const CoreAge> ages, CoreId core) {
    const auto found = std::ranges::find(ages, core, &CoreAge::core);
    if (found == ages.end()) {
        return {};
    }
    QJsonObject object;
    const auto add = [&](const QString& key, const std::optional<YearRange>& range) {
        object[key] = range ? QJsonValue(range->year.value()) : QJsonValue();
        object[key + "_low"] = range ? QJsonValue(range->low.value()) : QJsonValue();
        object[key + "_high"] = range ? QJsonValue(range->high.value()) : QJsonValue();
    };
    const Age& age = found->age;
    add("pith_year", age.pith);
    object["years_to_height"] = age.allowance ? QJsonValue(age.allowance->years) : QJsonValue();
    object["years_to_height_sd"] = age.allowance ? QJsonValue(age.allowance->sd) : QJsonValue();
    add("establishment_year", age.establishment);
    return object;
}

} // namespace

std::string project_json(std::span<const CoreEntry> cores, std::span<const ReadingEntry> readings,
                         std::span<const ReadingComparison> comparisons, std::span<const CoreAge> ages,
                         std::span<const Person> people) {
    QJsonArray persons;
    for (const Person& person : people) {
        persons.append(QJsonObject{{"name", json_text(person.name)}, {"role", json_text(person.role)}});
    }
    QJsonArray list;
    for (const CoreEntry& core : cores) {
        QJsonArray of_core;
        for (const ReadingEntry& reading : readings) {
            if (reading.core == core.id) {
                of_core.append(reading_object(reading, core));
            }
        }
        QJsonArray compared;
        for (const ReadingComparison& one : comparisons) {
            if (one.core == core.id) {
                compared.append(comparison_object(one));
            }
        }
        list.append(QJsonObject{{"site", json_text(core.site.id)},
                                {"tree", json_text(core.tree.id)},
                                {"core", json_text(core.core.id)},
                                {"scan", core.core.scan.empty() ? QJsonValue() : json_text(core.core.scan)},
                                {"age", age_or_null(ages, core.id)},
                                {"readings", of_core},
                                {"comparisons", compared}});
    }
    return QJsonDocument(QJsonObject{{"cores", list}, {"people", persons}}).toJson().toStdString();
}

} // namespace pithward::record
