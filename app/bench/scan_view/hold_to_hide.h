#pragma once

#include <QObject>

namespace pithward::bench {

/// While H is held, wherever the focus is but in a field where one types, the marks are hidden.
class HoldToHide : public QObject {
    Q_OBJECT

public:
    explicit HoldToHide(QObject* parent);

signals:
    void held(bool hidden);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace pithward::bench
