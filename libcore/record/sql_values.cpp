#include "libcore/record/sql_values.h"

namespace pithward::record {

QVariant to_sql(const std::string& text) {
    return QString::fromStdString(text);
}
QVariant to_sql(const std::optional<double>& number) {
    return number ? QVariant(*number) : QVariant(QMetaType::fromType<double>());
}
QVariant to_sql(const std::optional<int>& number) {
    return number ? QVariant(*number) : QVariant(QMetaType::fromType<int>());
}
QVariant to_sql(std::int64_t number) {
    return QVariant(static_cast<qlonglong>(number));
}
std::string text_from(const QVariant& value) {
    return value.toString().toStdString();
}
bool is_number(const QVariant& value) {
    const int type = value.typeId();
    return value.isNull() || type == QMetaType::Double || type == QMetaType::LongLong || type == QMetaType::Int;
}
std::optional<double> number_from(const QVariant& value) {
    return value.isNull() ? std::nullopt : std::optional(value.toDouble());
}
std::optional<int> whole_from(const QVariant& value) {
    return value.isNull() ? std::nullopt : std::optional(value.toInt());
}

} // namespace pithward::record
