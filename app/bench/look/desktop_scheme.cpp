#include "app/bench/look/desktop_scheme.h"

#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>

namespace pithward::bench {

namespace {

// The desktop's settings, by the freedesktop portal: 1 wishes dark, 2 light, 0 has no wish.
constexpr auto service = "org.freedesktop.portal.Desktop";
constexpr auto object = "/org/freedesktop/portal/desktop";
constexpr auto interface = "org.freedesktop.portal.Settings";
constexpr auto group_name = "org.freedesktop.appearance";
constexpr auto key_name = "color-scheme";
constexpr uint wish_dark = 1;

} // namespace

void DesktopScheme::ask() {
    QDBusConnection bus = QDBusConnection::sessionBus();
    if (!bus.isConnected()) {
        return;
    }
    bus.connect(service, object, interface, "SettingChanged", this, SLOT(changed(QString, QString, QDBusVariant)));
    QDBusMessage question = QDBusMessage::createMethodCall(service, object, interface, "Read");
    question << QString(group_name) << QString(key_name);
    auto* reply = new QDBusPendingCallWatcher(bus.asyncCall(question), this);
    connect(reply, &QDBusPendingCallWatcher::finished, this, [this](QDBusPendingCallWatcher* call) {
        const QDBusPendingReply<QDBusVariant> answer = *call;
        if (!answer.isError()) {
            changed(group_name, key_name, answer.value());
        }
        call->deleteLater();
    });
}

void DesktopScheme::changed(const QString& group, const QString& key, const QDBusVariant& value) {
    if (group != group_name || key != key_name) {
        return;
    }
    QVariant wish = value.variant();
    if (wish.canConvert<QDBusVariant>()) { // `Read` wraps its answer twice
        wish = wish.value<QDBusVariant>().variant();
    }
    emit told(wish.toUInt() == wish_dark);
}

} // namespace pithward::bench
