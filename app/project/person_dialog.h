#pragma once

#include <QDialog>
#include <QMap>
#include <QString>

class QComboBox;

namespace pithward::bench {

/// Asks who works here: a name and a role, as they shall be told. Who is known already is there to be chosen.
class PersonDialog : public QDialog {
    Q_OBJECT

public:
    /// `roles` by name, of those who are known; `now` is the name that is used so far.
    PersonDialog(QMap<QString, QString> roles, const QString& now, QWidget* parent = nullptr);

signals:
    void said(const QString& name, const QString& role);

private:
    /// A name that is known brings its role.
    void follow_name();

    QMap<QString, QString> roles_;
    QComboBox* name_;
    QComboBox* role_;
};

} // namespace pithward::bench
