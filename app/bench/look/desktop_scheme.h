#pragma once

#include <QDBusVariant>
#include <QObject>

namespace pithward::bench {

/// Whether the desktop wishes light or dark windows.
class DesktopScheme : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;
    /// Asks without waiting, and listens from then on. The desktop may answer later, or never.
    void ask();

signals:
    void told(bool dark);

private slots:
    void changed(const QString& group, const QString& key, const QDBusVariant& value);
};

} // namespace pithward::bench
