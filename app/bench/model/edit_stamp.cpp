#include "app/bench/model/edit_stamp.h"

#include <QCoreApplication>
#include <QDateTime>

namespace pithward::bench {

EditStamp stamp_now() {
    const QString login = qEnvironmentVariable("USER", qEnvironmentVariable("LOGNAME"));
    return {login.isEmpty() ? "analyst" : login.toStdString(),
            QDateTime::currentDateTimeUtc().toString(Qt::ISODateWithMs).toStdString(),
            QCoreApplication::applicationVersion().toStdString()};
}

} // namespace pithward::bench
