#pragma once

#include <QFrame>
#include <QStringList>

class QLabel;

namespace pithward::bench {

/// Tells a person something, in the window and without stopping their work. Stays until it is closed or something else
/// is told.
class MessageBar : public QFrame {
    Q_OBJECT

public:
    explicit MessageBar(QWidget* parent = nullptr);
    /// Messages that come together are shown together. What a library says is told in the window's language.
    void tell(const QString& sentence);
    void put_away();
    [[nodiscard]] QString text() const;

private:
    QLabel* label_;
    QStringList messages_;
};

} // namespace pithward::bench
